import type { Length } from "#lib/units/quantities";
import { areaBound } from "./areaBound";
import { materialBound } from "./bound";
import type { CutPiece, CuttingPlan } from "./cuttingPlan";
import { inStocks, isLengthwise, type Lanes, lanesOf, placedInLanes } from "./lanes";
import { withRests } from "./offCuts";
import { type OnCloth, onRoll } from "./onRoll";
import type { Piece } from "./pieces";
import type { FoundCuts } from "./question";

/** What the pieces are cut from: `cuttable` null has no breadth, `stock` null is one long length. */
export interface Goods {
  readonly material: string;
  readonly set: string | null;
  readonly lot: string | null;
  readonly cuttable: Length | null;
  readonly stock: Length | null;
  readonly kerf: Length;
  /** Shortest rest worth keeping; null when none is. */
  readonly keep: Length | null;
  /** The grain is free: pieces may lie a quarter turn round. */
  readonly turned: boolean;
}

const NOTHING_FOUND: FoundCuts = () => null;

/** What a plan comes to, and the plan itself for whoever needs the places: most who ask only count. */
export interface Measured {
  readonly count: number;
  readonly used: Length;
  readonly plan: () => CuttingPlan;
}

/**
 * Pieces where they are cut. Lengthwise from rods, coils and tapes, and strips across the roll: proved fewest where the bound is met. Panels
 * and rectangles in rows across, which are easy to cut, or as they fit best where that takes less. By rules of thumb at once, or as a search
 * has found. Null when a piece is longer than the stock.
 */
export const layOut = (pieces: readonly Piece[], goods: Goods, found?: FoundCuts): CuttingPlan | null =>
  measureOut(pieces, goods, found)?.plan() ?? null;

/** As `layOut`, counted before anything is placed. */
export const measureOut = (pieces: readonly Piece[], goods: Goods, found: FoundCuts = NOTHING_FOUND): Measured | null => {
  const { cuttable, stock, kerf } = goods;
  if (stock !== null && pieces.some((piece) => piece.length > stock)) return null;
  const lanes = inStocks(lanesOf(pieces, goods), goods, found);
  if (cuttable !== null && !isLengthwise(pieces, cuttable)) {
    const plan = onCloth(pieces, { ...goods, cuttable }, lanes, found);
    return { count: plan.count, used: plan.used, plan: () => plan };
  }
  const used = lanes.stocks.reduce((sum, own) => sum + own.reduce((end, lane) => end + lane.depth + kerf, -kerf), 0);
  const placed = () => lanes.stocks.map((own) => placedInLanes(own, pieces, goods));
  return { count: lanes.stocks.length, used, plan: () => told(placed(), goods, { ...lanes, lengthBound: used }) };
};

const onCloth = (pieces: readonly Piece[], goods: OnCloth, lanes: Lanes, found: FoundCuts): CuttingPlan => {
  const { stock } = goods;
  const rows = lanes.stocks.map((own) => placedInLanes(own, pieces, goods));
  const bound = stock === null ? Math.min(1, pieces.length) : fewestOnCloth(pieces, goods, stock);
  const inRows = told(rows, goods, { ...lanes, bound, lengthBound: 0 });
  if (stock !== null && inRows.proved) return inRows;
  const fitted = onRoll(pieces, goods, found);
  const plain = stock === null ? told(rows, goods, { ...fitted, bound }) : inRows;
  if (fitted.stocks.length === 0) return plain;
  const tried = told(fitted.stocks, goods, { ...fitted, bound });
  return tried.count < plain.count || (tried.count === plain.count && tried.used < plain.used) ? tried : plain;
};

/** Each piece takes the cut beside it and after it. */
const fewestOnCloth = (pieces: readonly Piece[], { cuttable, kerf, turned }: OnCloth, stock: Length): number => {
  const taken = pieces.map(({ length, breadth }) => ({ length: length + kerf, breadth: (breadth ?? cuttable) + kerf }));
  const whole = { length: stock + kerf, breadth: cuttable + kerf };
  return turned
    ? materialBound(
        taken.map(({ length, breadth }) => length * breadth),
        whole.length * whole.breadth,
      )
    : areaBound(taken, whole.length, whole.breadth);
};

const endOf = (pieces: readonly CutPiece[]): Length => pieces.reduce((most, piece) => Math.max(most, piece.y + piece.length), 0);

/** What is known of the best plan there can be, and what a search may be asked for it. */
type Known = Pick<CuttingPlan, "bound" | "question"> & { readonly lengthBound: Length; readonly searched: boolean };

const told = (stocks: readonly (readonly CutPiece[])[], goods: Goods, known: Known): CuttingPlan => {
  const { cuttable, stock, material, set, lot, kerf } = goods;
  const used = stocks.reduce((sum, own) => sum + endOf(own), 0);
  const count = stocks.length;
  const lengthBound = stock === null ? known.lengthBound : null;
  const proved = lengthBound === null ? count === known.bound : used === lengthBound;
  return {
    ...{ material, set, lot, cuttable, stock, kerf, used, count, bound: known.bound, lengthBound, proved },
    patterns: stocks.map((own) => withRests(own, goods)),
    waste: stock === null ? 0 : count * stock - used,
    effort: known.searched ? "searched" : "at once",
    question: proved ? null : known.question,
  };
};
