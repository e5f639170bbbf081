import type { Cuts } from "./job";

/** What a linear programme says: stocks in all, how many of each way to cut (fractions too), and what a piece of each length is worth. */
export interface CoverSolution {
  readonly value: number;
  readonly times: Float64Array;
  readonly worth: Float64Array;
}

/**
 * The linear programme of cutting stock, kept between solves: fewest stocks, each cut in one of the ways added so far, with at least the
 * pieces asked for. Holds memory outside the language's own: dispose of it.
 */
export interface CoverProgram {
  readonly add: (ways: readonly Cuts[]) => void;
  /** At least so many stocks are cut in each way, by its place in the order of adding; other ways are free again. */
  readonly atLeast: (times: ReadonlyMap<number, number>) => void;
  readonly solve: () => CoverSolution;
  readonly dispose: () => void;
}

/** Opens a programme for so many pieces of each length. */
export type OpenProgram = (counts: readonly number[]) => CoverProgram;
