/** Widths of letters as parts of their size, in the reading letter set bold, a little on the safe side: measured on pages, since lib knows no font. */
const WIDTHS: readonly (readonly [RegExp, number])[] = [
  [/[mwMW]/, 0.87],
  [/[A-Z0-9–+]/, 0.64],
  [/[iljtfr,.;:' ]/, 0.32],
];
const OTHERS = 0.57;

/** About how wide a text runs, in the units of `size`. */
export const textWidth = (text: string, size: number): number =>
  [...text].reduce((sum, letter) => sum + (WIDTHS.find(([letters]) => letters.test(letter))?.[1] ?? OTHERS), 0) * size;

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
