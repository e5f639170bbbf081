import type { Length } from "#lib/units/quantities";
import type { CutPattern, CuttingPlan } from "./cuttingPlan";

interface Box {
  readonly name: string;
  readonly x: Length;
  readonly y: Length;
  readonly across: Length;
  readonly along: Length;
}

/** What is wrong with the places of one pattern, in words: off the stock, over another, too near for the cut between, an off-cut with a piece on it. */
export const checkPattern = (plan: CuttingPlan, pattern: CutPattern, cuttable: Length | null): readonly string[] => {
  const faults: string[] = [];
  const box = (name: string, one: { x: Length; y: Length; length: Length; breadth: Length | null }): Box => ({
    ...{ name, x: one.x, y: one.y, along: one.length },
    across: one.breadth ?? cuttable ?? 0,
  });
  const pieces = pattern.pieces.map((piece) => box(`${piece.garment} ${piece.label}`, piece));
  const rests = pattern.offcuts.map((rest) => box("An off-cut", rest));
  for (const { name, x, y, across, along } of [...pieces, ...rests]) {
    if (![x, y, across, along].every(Number.isSafeInteger)) faults.push(`${name} lies between the units.`);
    if (x < 0 || x + across > (cuttable ?? 0)) faults.push(`${name} lies off the width.`);
    if (y < 0 || (plan.stock !== null && y + along > plan.stock)) faults.push(`${name} lies off the stock.`);
  }
  const sorted = [...pieces].sort((a, b) => a.y - b.y);
  for (const [at, a] of sorted.entries())
    for (let next = at + 1; next < sorted.length && sorted[next]!.y < a.y + a.along + plan.kerf; next++)
      if (meet(a, sorted[next]!, plan.kerf)) faults.push(`${a.name} and ${sorted[next]!.name} lie over each other, or nearer than a cut.`);
  for (const rest of rests) if (pieces.some((piece) => meet(rest, piece, 0))) faults.push("A piece lies on an off-cut.");
  const end = Math.max(0, ...pieces.map(({ y, along }) => y + along));
  const left = plan.stock === null ? 0 : Math.max(0, plan.stock - end - plan.kerf);
  if (pattern.offcut !== left) faults.push(`${left} is left of a stock, ${pattern.offcut} is told.`);
  return faults;
};

/** What has no breadth fills the whole of it. */
const meet = (a: Box, b: Box, apart: Length): boolean =>
  a.y < b.y + b.along + apart &&
  b.y < a.y + a.along + apart &&
  ((a.across === 0 && b.across === 0) || (a.x < b.x + b.across + apart && b.x < a.x + a.across + apart));
