import type { Length } from "#lib/units/quantities";
import type { CutPattern, CutPiece, OffCut } from "./cuttingPlan";
import type { Goods } from "./layOut";

/** Pieces of one stock as a pattern, with what is left: at the end of the stock, and beside rows that do not fill the width. */
export const withRests = (pieces: readonly CutPiece[], goods: Goods): CutPattern => {
  const { stock, kerf, keep } = goods;
  const end = pieces.reduce((most, piece) => Math.max(most, piece.y + piece.length), 0);
  const offcut = stock === null ? 0 : Math.max(0, stock - end - kerf);
  const worth = (rest: Omit<OffCut, "kept">): OffCut => ({
    ...rest,
    kept: keep !== null && rest.length >= keep && (rest.breadth === null || rest.breadth >= keep),
  });
  const atEnd = offcut > 0 ? [{ x: 0, y: end + kerf, length: offcut, breadth: null }] : [];
  return { times: 1, pieces, offcut, offcuts: [...besideRows(pieces, goods), ...atEnd].map(worth) };
};

/** Rests at the far selvedge, those of rows one after the other joined where they are alike in breadth. */
const besideRows = (pieces: readonly CutPiece[], { cuttable, kerf }: Goods): readonly Omit<OffCut, "kept">[] => {
  if (cuttable === null) return [];
  const rows = new Map<number, { y: Length; depth: Length; across: Length }>();
  for (const { row, x, y, length, breadth } of pieces) {
    if (row === null) continue;
    const known = rows.get(row) ?? { y, depth: 0, across: 0 };
    rows.set(row, { y, depth: Math.max(known.depth, length), across: Math.max(known.across, x + (breadth ?? cuttable)) });
  }
  const rests: { x: Length; y: Length; length: Length; breadth: Length }[] = [];
  for (const { y, depth, across } of rows.values()) {
    const breadth = cuttable - across - kerf;
    if (breadth <= 0) continue;
    const last = rests.at(-1);
    if (last && last.breadth === breadth && last.y + last.length + kerf === y) last.length = y + depth - last.y;
    else rests.push({ x: across + kerf, y, length: depth, breadth });
  }
  return rests;
};
