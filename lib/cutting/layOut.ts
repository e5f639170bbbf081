import type { CuttingPlan } from "#lib/purchasing/purchase";
import type { Length } from "#lib/units/quantities";
import { materialBound, stocksBound } from "./bound";
import { cutAtOnce } from "./cutAtOnce";
import type { Piece } from "./pieces";
import { type Row, rowsAcross } from "./rows";

/** What the pieces are cut from: `cuttable` null has no breadth, `stock` null is one long length. */
export interface Goods {
  readonly material: string;
  readonly set: string | null;
  readonly lot: string | null;
  readonly cuttable: Length | null;
  readonly stock: Length | null;
}

/** Pieces in rows (each alone where there is no breadth), rows in stocks. Null when a piece is longer than the stock. */
export const layOut = (pieces: readonly Piece[], goods: Goods): CuttingPlan | null => {
  const { cuttable, stock, ...named } = goods;
  if (stock !== null && pieces.some((piece) => piece.length > stock)) return null;
  const rows: readonly Row[] =
    cuttable === null ? pieces.map((piece, index) => ({ depth: piece.length, pieces: [index] })) : rowsAcross(pieces, cuttable);
  const depths = rows.map((row) => row.depth);
  const used = depths.reduce((sum, depth) => sum + depth, 0);
  const bins = stock === null ? [rows.map((_, index) => index)].filter((bin) => bin.length > 0) : cutAtOnce(depths, stock);
  return {
    ...named,
    stock,
    patterns: bins.map((bin) => ({
      times: 1,
      pieces: bin.flatMap((rowIndex, at) =>
        rows[rowIndex]!.pieces.map((index) => ({ ...pieces[index]!, row: cuttable === null ? null : at + 1 })),
      ),
      offcut: stock === null ? 0 : stock - bin.reduce((sum, index) => sum + depths[index]!, 0),
    })),
    used,
    waste: stock === null ? 0 : bins.length * stock - used,
    count: bins.length,
    bound: fewest(pieces, cuttable, stock),
  };
};

/** The fewest stocks any plan can use: by lengths where every piece has its row to itself, else by area. */
const fewest = (pieces: readonly Piece[], cuttable: Length | null, stock: Length | null): number => {
  if (stock === null) return Math.min(pieces.length, 1);
  if (cuttable === null || pieces.every((piece) => piece.breadth === null))
    return stocksBound(
      pieces.map((piece) => piece.length),
      stock,
    );
  const areas = pieces.map((piece) => piece.length * (piece.breadth ?? cuttable));
  return materialBound(areas, stock * cuttable);
};
