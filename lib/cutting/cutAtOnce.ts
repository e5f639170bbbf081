import { stocksBound } from "./bound";
import { byRules } from "./fewest/byRules";
import { jobOf } from "./fewest/job";
import { firstFitDecreasing } from "./firstFit";

/** With more pieces the other rules take longer than a page may wait; a search proves such jobs soon after. */
const MOST_AT_ONCE = 200;

/** The indices of each length, in their order. */
export const indicesByLength = (lengths: readonly number[]): Map<number, number[]> => {
  const alike = new Map<number, number[]>();
  for (const [index, length] of lengths.entries()) {
    const known = alike.get(length);
    if (known) known.push(index);
    else alike.set(length, [index]);
  }
  return alike;
};

/**
 * Stocks to cut, found at once: first-fit decreasing, and where its plan is not proved by the bound, other rules of thumb if they need fewer.
 * Returns the indices of the pieces in each stock.
 *
 * @throws RangeError for a piece longer than the stock: whoever calls must have looked.
 */
export const cutAtOnce = (lengths: readonly number[], stock: number): readonly (readonly number[])[] => {
  const plain = firstFitDecreasing(lengths, stock);
  if (lengths.length > MOST_AT_ONCE || plain.length === stocksBound(lengths, stock)) return plain;
  const job = jobOf(
    stock,
    lengths,
    lengths.map(() => 1),
  );
  const { settled, best } = byRules(job);
  const alike = indicesByLength(lengths);
  const bins = [...settled, ...best].flatMap(({ cuts, times }) =>
    Array.from({ length: times }, () => cuts.flatMap(([place, count]) => alike.get(job.lengths[place]! * job.unit)!.splice(0, count))),
  );
  return bins.length < plain.length ? bins : plain;
};
