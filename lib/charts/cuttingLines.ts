import type { CutPiece } from "#lib/cutting/cuttingPlan";
import type { Length } from "#lib/units/quantities";

/**
 * Where a stock is broken into lines no longer than `most`: between pieces, as far along as fits; through a piece only where one is longer
 * than a line. The last is the end of the stock.
 */
export const lineEnds = (pieces: readonly Pick<CutPiece, "y" | "length">[], end: Length, most: Length): readonly Length[] => {
  const gaps = gapsBetween(pieces, end);
  const ends: Length[] = [];
  let from = 0;
  while (end - from > most) {
    const last = gaps.findLast((gap) => gap > from && gap <= from + most);
    from = last ?? from + most;
    ends.push(from);
  }
  return [...ends, end];
};

/** Places along the stock that no piece lies across, at the start of the next piece; ascending. */
const gapsBetween = (pieces: readonly Pick<CutPiece, "y" | "length">[], end: Length): readonly Length[] => {
  const gaps: Length[] = [];
  let covered = 0;
  for (const { y, length } of [...pieces].sort((a, b) => a.y - b.y)) {
    if (y >= covered && y > 0) gaps.push(y);
    covered = Math.max(covered, y + length);
  }
  if (covered < end) gaps.push(covered);
  return gaps;
};
