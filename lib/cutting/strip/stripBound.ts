import type { StripJob } from "./strip";

/**
 * No plan is shorter: the area over the width, the tallest piece, and the pieces broader than half the roll one after another. A piece that
 * may be turned counts as it takes least.
 */
export const stripBound = ({ width, pieces, turned }: StripJob): number => {
  const ways = ({ width: across, height }: StripJob["pieces"][number]) =>
    [{ across, along: height }, ...(turned ? [{ across: height, along: across }] : [])].filter((way) => way.across <= width);
  const area = pieces.reduce((sum, piece) => sum + piece.width * piece.height, 0);
  let tallest = 0;
  let broad = 0;
  for (const piece of pieces) {
    const own = ways(piece);
    tallest = Math.max(tallest, Math.min(...own.map(({ along }) => along)));
    if (own.every(({ across }) => 2 * across > width)) broad += Math.min(...own.map(({ along }) => along));
  }
  return Math.max(Math.ceil(area / width), tallest, broad);
};
