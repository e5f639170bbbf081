/** Mean width of a letter as a part of its size in the reading letter, a little on the safe side (measured by eye on the pages; no font here). */
const LETTER = 0.58;

/** About how wide a text runs, in the units of `size`. */
export const textWidth = (text: string, size: number): number => text.length * size * LETTER;

/** Words in as few lines as the width allows; a word wider than it stands alone. Nothing is cut. */
export const wrapWords = (text: string, width: number, size: number): readonly string[] => {
  const lines: string[] = [];
  for (const word of text.split(" ").filter((part) => part !== "")) {
    const last = lines.at(-1);
    if (last !== undefined && textWidth(`${last} ${word}`, size) <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
};
