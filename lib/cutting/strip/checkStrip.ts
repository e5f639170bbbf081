import type { Placed, StripJob } from "./strip";

/**
 * Judges places on the roll from the pieces alone, sharing no code with what makes them: every piece is there, turned only where it may be,
 * on the roll, and none lies over another. Returns what is wrong, in words.
 */
export const checkStrip = (job: StripJob, placed: readonly Placed[], height: number): readonly string[] => {
  const faults: string[] = [];
  if (placed.length !== job.pieces.length) faults.push(`${placed.length} of ${job.pieces.length} pieces are placed.`);
  for (const [at, piece] of job.pieces.entries()) {
    const lies = placed[at];
    if (lies === undefined) continue;
    const straight = lies.width === piece.width && lies.height === piece.height;
    const turned = lies.width === piece.height && lies.height === piece.width;
    if (!straight && !(turned && job.turned)) faults.push(`Piece ${at} lies as ${lies.width} x ${lies.height}.`);
    if (!Number.isSafeInteger(lies.x) || !Number.isSafeInteger(lies.y)) faults.push(`Piece ${at} lies between the units.`);
    if (lies.x < 0 || lies.y < 0 || lies.x + lies.width > job.width || lies.y + lies.height > height)
      faults.push(`Piece ${at} lies off the roll.`);
  }
  const byStart = [...placed.entries()].sort(([, a], [, b]) => a.y - b.y);
  for (const [order, [at, a]] of byStart.entries())
    for (let next = order + 1; next < byStart.length && byStart[next]![1].y < a.y + a.height; next++) {
      const [other, b] = byStart[next]!;
      if (a.x < b.x + b.width && b.x < a.x + a.width) faults.push(`Pieces ${at} and ${other} lie over each other.`);
    }
  return faults;
};
