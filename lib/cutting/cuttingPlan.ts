import type { Length } from "#lib/units/quantities";
import type { CutQuestion } from "./question";

/** One piece where it is cut. Lengths in 1/80 mm; `x` from the selvedge across the roll, `y` along it from the cut end (for rods and coils x is 0). */
export interface CutPiece {
  readonly garment: string;
  readonly label: string;
  readonly x: Length;
  readonly y: Length;
  /** Along the roll, rod or coil, as it lies. */
  readonly length: Length;
  /** Across the roll, as it lies; null for what has no breadth or takes the full width. */
  readonly breadth: Length | null;
  /** It lies a quarter turn round: only where the grain is free. */
  readonly turned: boolean;
  /** Row across the roll, 1-based within its stock; null for what has no breadth. Pieces of one row lie side by side. */
  readonly row: number | null;
}

/** A rest that may serve another job: a rectangle of the stock with no piece on it. `breadth` null: the full width, or none. */
export interface OffCut {
  readonly x: Length;
  readonly y: Length;
  readonly length: Length;
  readonly breadth: Length | null;
  /** Worth keeping: no shorter and no narrower than the material's least. Otherwise it is waste. */
  readonly kept: boolean;
}

/** One way a stock is cut, and how many stocks are cut so. */
export interface CutPattern {
  readonly times: number;
  readonly pieces: readonly CutPiece[];
  /** What is left at the end of the stock, after the last piece and its cut. */
  readonly offcut: Length;
  readonly offcuts: readonly OffCut[];
}

/** Pieces laid out on rods, coils or the roll: all that is needed to draw it and to cut by it. */
export interface CuttingPlan {
  readonly material: string;
  /** The one set it is for; null for several, or for garments that need not match. */
  readonly set: string | null;
  /** Lot on the shelf it is cut from; null: from what is bought. */
  readonly lot: string | null;
  /** Width that may be cut; null for what has none. */
  readonly cuttable: Length | null;
  /** Length of one rod, coil or roll, after washing; null when cut from one long length. */
  readonly stock: Length | null;
  /** Lost at each cut. */
  readonly kerf: Length;
  readonly patterns: readonly CutPattern[];
  /** Length that pieces, rows and cuts take. */
  readonly used: Length;
  readonly waste: Length;
  /** Stocks used, and the fewest any plan can use. */
  readonly count: number;
  readonly bound: number;
  /** For one long length: a length below which no plan can be. Null where stocks are counted. */
  readonly lengthBound: Length | null;
  /** No plan needs less: the bound is reached. */
  readonly proved: boolean;
  /** Found at once by rules of thumb, or by a search that may prove it. */
  readonly effort: "at once" | "searched";
  /** What a search may be asked to better or prove it; null when it is proved, or nothing can be asked. */
  readonly question: CutQuestion | null;
}
