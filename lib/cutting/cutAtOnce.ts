import { stocksBound } from "./bound";
import { byRules } from "./fewest/byRules";
import { jobOf } from "./fewest/job";
import { firstFitDecreasing } from "./firstFit";

/**
 * Stocks to cut, found at once: first-fit decreasing, and where its plan is not proved by the bound, other rules of thumb if they need fewer.
 * Returns the indices of the pieces in each stock.
 *
 * @throws RangeError for a piece longer than the stock: whoever calls must have looked.
 */
export const cutAtOnce = (lengths: readonly number[], stock: number): readonly (readonly number[])[] => {
  const plain = firstFitDecreasing(lengths, stock);
  if (plain.length === stocksBound(lengths, stock)) return plain;
  const job = jobOf(
    stock,
    lengths,
    lengths.map(() => 1),
  );
  const { settled, best } = byRules(job);
  const alike = new Map<number, number[]>();
  for (const [index, length] of lengths.entries()) alike.set(length, [...(alike.get(length) ?? []), index]);
  const bins = [...settled, ...best].flatMap(({ cuts, times }) =>
    Array.from({ length: times }, () => cuts.flatMap(([place, count]) => alike.get(job.lengths[place]! * job.unit)!.splice(0, count))),
  );
  return bins.length < plain.length ? bins : plain;
};
