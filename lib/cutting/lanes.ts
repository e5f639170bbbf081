import type { Length } from "#lib/units/quantities";
import { stocksBound } from "./bound";
import { cutAtOnce, indicesByLength } from "./cutAtOnce";
import type { CutPiece } from "./cuttingPlan";
import type { Goods } from "./layOut";
import type { Piece } from "./pieces";
import { type CutQuestion, type FoundCuts, stocksQuestion } from "./question";
import { rowsAcross } from "./rows";

/** What is cut off the stock at once: a piece of a rod, or a row of pieces across the roll. `pieces` are indices. */
export interface Lane {
  readonly depth: Length;
  readonly pieces: readonly number[];
}

export interface Lanes {
  /** Lanes of each stock, in the order they are cut. */
  readonly stocks: readonly (readonly Lane[])[];
  /** Stocks that these lanes cannot do without. */
  readonly bound: number;
  readonly searched: boolean;
  readonly question: CutQuestion | null;
}

/** Nothing needs to lie beside anything: rods, coils, tapes, strips across the roll. */
export const isLengthwise = (pieces: readonly Piece[], cuttable: Length | null): boolean =>
  cuttable === null || pieces.every(({ breadth }) => breadth === null || breadth === cuttable);

export const lanesOf = (pieces: readonly Piece[], { cuttable, kerf }: Goods): readonly Lane[] =>
  cuttable === null || isLengthwise(pieces, cuttable)
    ? pieces.map(({ length }, index) => ({ depth: length, pieces: [index] }))
    : rowsAcross(pieces, cuttable, kerf);

/** Lanes in stocks: as a search has found where it needs fewer, else at once. Each lane takes its depth and the cut after it. */
export const inStocks = (lanes: readonly Lane[], { stock, kerf }: Goods, found: FoundCuts): Lanes => {
  if (stock === null || lanes.length === 0)
    return { stocks: lanes.length > 0 ? [lanes] : [], bound: Math.min(1, lanes.length), searched: false, question: null };
  const lengths = lanes.map(({ depth }) => depth + kerf);
  const whole = stock + kerf;
  const atOnce = cutAtOnce(lengths, whole);
  const own = stocksBound(lengths, whole);
  if (atOnce.length === own) return { stocks: pick(lanes, atOnce), bound: own, searched: false, question: null };
  const question = stocksQuestion(lengths, whole);
  const answer = found(question);
  if (answer?.kind !== "stocks") return { stocks: pick(lanes, atOnce), bound: own, searched: false, question };
  const bound = Math.max(own, answer.bound);
  const stocks = pick(lanes, answer.used < atOnce.length ? byPattern(lengths, answer.patterns) : atOnce);
  return { stocks, bound, searched: true, question: stocks.length > bound ? question : null };
};

const pick = (lanes: readonly Lane[], bins: readonly (readonly number[])[]): Lanes["stocks"] =>
  bins.map((bin) => bin.map((index) => lanes[index]!));

type Patterns = readonly { readonly count: number; readonly cuts: readonly (readonly [Length, number])[] }[];

const byPattern = (lengths: readonly Length[], patterns: Patterns): readonly (readonly number[])[] => {
  const alike = indicesByLength(lengths);
  return patterns.flatMap(({ count, cuts }) =>
    Array.from({ length: count }, () => cuts.flatMap(([length, times]) => alike.get(length)!.splice(0, times))),
  );
};

/** Pieces of one stock where they are cut, lane after lane. */
export const placedInLanes = (lanes: readonly Lane[], pieces: readonly Piece[], { cuttable, kerf }: Goods): readonly CutPiece[] => {
  const placed: CutPiece[] = [];
  let y = 0;
  for (const [at, lane] of lanes.entries()) {
    let x = 0;
    const row = cuttable === null ? null : at + 1;
    for (const index of lane.pieces) {
      const { garment, label, length, breadth } = pieces[index]!;
      placed.push({ garment, label, x, y, length, breadth, turned: false, row });
      x += (breadth ?? cuttable ?? 0) + kerf;
    }
    y += lane.depth + kerf;
  }
  return placed;
};
