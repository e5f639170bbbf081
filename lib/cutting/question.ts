import type { Length } from "#lib/units/quantities";

/**
 * What a search for a better cutting plan is asked, told by lengths alone, so that an answer serves every job that asks the same. Each piece
 * counts with the cut beside it, and so does the stock or the width. Pieces are sorted, longest first, alike ones once with their count.
 */
export type CutQuestion =
  | { readonly kind: "stocks"; readonly stock: Length; readonly lengths: readonly (readonly [length: Length, count: number])[] }
  | {
      readonly kind: "strip";
      readonly width: Length;
      readonly turned: boolean;
      readonly pieces: readonly (readonly [width: Length, height: Length, count: number])[];
    };

/** What a search found: stocks or length of roll used, and a figure that no plan can be below. Proved where they are alike. */
export type CutAnswer =
  | {
      readonly kind: "stocks";
      readonly used: number;
      readonly bound: number;
      readonly patterns: readonly { readonly count: number; readonly cuts: readonly (readonly [length: Length, times: number])[] }[];
    }
  | {
      readonly kind: "strip";
      readonly used: Length;
      readonly bound: Length;
      /** As it lies, in the order of the question's pieces: from the selvedge, from the cut end, across, along. */
      readonly placed: readonly (readonly [x: Length, y: Length, width: Length, height: Length])[];
    };

/** Answers kept, by the name of their question. */
export type FoundCuts = (question: CutQuestion) => CutAnswer | null;

const counted = <T>(items: readonly T[], name: (item: T) => string): readonly (readonly [T, number])[] => {
  const counts = new Map<string, [T, number]>();
  for (const item of items) {
    const known = counts.get(name(item));
    if (known) known[1]++;
    else counts.set(name(item), [item, 1]);
  }
  return [...counts.values()];
};

export const stocksQuestion = (lengths: readonly Length[], stock: Length): CutQuestion => ({
  kind: "stocks",
  stock,
  lengths: counted(
    [...lengths].sort((a, b) => b - a),
    String,
  ),
});

/** The pieces in the order of the question's. */
export const inStripOrder = (a: { readonly width: Length; readonly height: Length }, b: typeof a): number =>
  b.height - a.height || b.width - a.width;

export const stripQuestion = (
  pieces: readonly { readonly width: Length; readonly height: Length }[],
  width: Length,
  turned: boolean,
): CutQuestion => ({
  kind: "strip",
  width,
  turned,
  pieces: counted([...pieces].sort(inStripOrder), (piece) => `${piece.width} ${piece.height}`).map(
    ([piece, count]) => [piece.width, piece.height, count] as const,
  ),
});

/** One text for one question: what an answer is kept under (by its digest). */
export const questionName = (question: CutQuestion): string =>
  question.kind === "stocks"
    ? `stocks ${question.stock}: ${question.lengths.map(([length, count]) => `${count}x${length}`).join(" ")}`
    : `strip ${question.width}${question.turned ? " turned" : ""}: ${question.pieces.map(([width, height, count]) => `${count}x${width}x${height}`).join(" ")}`;
