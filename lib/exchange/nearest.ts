/** Fewest insertions, removals, changes and exchanges of neighbours from one word to the other (Levenshtein's distance after Damerau). */
const distance = (one: string, other: string): number => {
  let before: readonly number[] = [];
  let above = Array.from({ length: other.length + 1 }, (_, column) => column);
  for (let row = 1; row <= one.length; row++) {
    const line = [row];
    for (let column = 1; column <= other.length; column++) {
      const change = (above[column - 1] ?? 0) + (one[row - 1] === other[column - 1] ? 0 : 1);
      const least = Math.min(change, (above[column] ?? 0) + 1, (line[column - 1] ?? 0) + 1);
      const exchanged = one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
      line.push(exchanged ? Math.min(least, (before[column - 2] ?? 0) + 1) : least);
    }
    before = above;
    above = line;
  }
  return above[other.length] ?? 0;
};

const LONGEST = 60;
/** Known words looked at: enough for any workroom, few enough that a file of nothing but slips is answered quickly. */
const MOST_KNOWN = 2000;

/** The known word a person most likely meant: at most a third of its letters off; null when none is near. First of equals. */
export const nearest = (written: string, known: Iterable<string>): string | null => {
  const word = written.toLowerCase();
  if (word.length > LONGEST) return null;
  let best: string | null = null;
  let least = Math.max(1, Math.floor(word.length / 3)) + 1;
  let looked = 0;
  for (const each of known) {
    if (++looked > MOST_KNOWN) break;
    if (Math.abs(each.length - word.length) >= least) continue;
    const off = distance(word, each.toLowerCase());
    if (off < least) [best, least] = [each, off];
  }
  return best;
};

/** What a slip is answered with: what was written, what is known, and what to do when none of it was meant. */
export type Suggest = (written: string, known: Iterable<string>, otherwise: string) => string;

/** Suggests for the first `most` slips and then only says what to do, so that 20,000 of them do not take minutes. */
export const suggestFor = (most: number): Suggest => {
  let left = most;
  return (written, known, otherwise) => (left-- > 0 ? meant(written, known, otherwise) : otherwise);
};

/** `Did you mean "bodice"?`, or what else to do. */
export const meant: Suggest = (written, known, otherwise) => {
  const found = nearest(written, known);
  return found === null ? otherwise : `Did you mean "${found}"? Otherwise: ${otherwise.charAt(0).toLowerCase()}${otherwise.slice(1)}`;
};
