/** Pieces to cut from alike stocks (rods, coils, bolts): distinct lengths, longest first, and how many of each. Whole numbers of one unit. */
export interface CutJob {
  readonly stock: number;
  readonly lengths: readonly number[];
  readonly counts: readonly number[];
  /** The lengths times this are those asked for. */
  readonly unit: number;
}

/** One way to cut a stock: how many of which length, by the length's place in the job. */
export type Cuts = readonly (readonly [place: number, times: number])[];

/** A way to cut, and how many stocks are cut so. */
export interface CutStocks {
  readonly cuts: Cuts;
  readonly times: number;
}

/**
 * A job in the coarsest unit that measures all its pieces; the rest of the stock is of no use to them.
 *
 * @throws RangeError for a piece that no stock can give: whoever calls must have looked.
 */
export const jobOf = (stock: number, lengths: readonly number[], counts: readonly number[]): CutJob => {
  const total = new Map<number, number>();
  for (const [at, length] of lengths.entries()) {
    if (length <= 0 || length > stock) throw new RangeError(`A piece of ${length} cannot be cut from a stock of ${stock}.`);
    total.set(length, (total.get(length) ?? 0) + counts[at]!);
  }
  const sorted = [...total].filter(([, count]) => count > 0).sort(([a], [b]) => b - a);
  const unit = sorted.reduce((common, [length]) => divisor(common, length), 0) || 1;
  return {
    stock: Math.floor(stock / unit),
    lengths: sorted.map(([length]) => length / unit),
    counts: sorted.map(([, count]) => count),
    unit,
  };
};

export const stocksIn = (plan: readonly CutStocks[]): number => plan.reduce((sum, { times }) => sum + times, 0);

const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
