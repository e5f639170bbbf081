import type { Need } from "#lib/breakdown/work";
import type { Length } from "#lib/units/quantities";
import type { CutPiece } from "./cuttingPlan";
import { widthsFor } from "./rows";

/** One piece to lay out, as a cutting plan names it. */
export type Piece = Pick<CutPiece, "garment" | "label" | "length" | "breadth">;

/**
 * The pieces a need is cut into. A panel broader than the roll becomes the widths that are joined for it. A need without listed pieces is
 * one piece, since a garment is not made up of ends without need: only what is longer than the stock is split. `turned`: the grain is free, so
 * that what is too broad may lie along the roll instead.
 */
export const piecesOf = (need: Need, cuttable: Length | null, stock: Length | null, turned = false): readonly Piece[] => {
  if (need.measure === "count") return [];
  const { garment } = need;
  if (need.cuts.length === 0)
    return splitBy(need.quantity, stock).map((length) => ({ garment, label: need.label.uk, length, breadth: null }));
  return need.cuts.flatMap(({ label, count, ...cut }) => {
    const along = turned && cuttable !== null && cut.breadth !== null && cut.breadth > cuttable && cut.length <= cuttable;
    const length = along ? (cut.breadth ?? 0) : cut.length;
    const breadth = along ? cut.length : cut.breadth;
    const widths = cuttable !== null && breadth !== null && breadth > cuttable ? widthsFor(breadth, cuttable) : 1;
    const piece = { garment, label, length, breadth: widths > 1 ? null : breadth };
    return Array.from({ length: count * widths }, () => piece);
  });
};

const splitBy = (quantity: Length, stock: Length | null): readonly Length[] => {
  if (stock === null || quantity <= stock) return [quantity];
  const whole = Array.from({ length: Math.floor(quantity / stock) }, () => stock);
  return quantity % stock === 0 ? whole : [...whole, quantity % stock];
};
