import { bySearch } from "./bySearch";
import { byTable } from "./byTable";
import type { CutJob } from "./job";
import type { Worthiest } from "./worth";

/** Above this many cells a table costs more than a search. */
const TABLE_LIMIT = 4_000_000;

/**
 * The pricing problem of column generation, a bounded knapsack: given what a piece of each length is worth, which ways to cut are worth more
 * than the stock they use? Exact: by a table over the lengths of the stock where it is short, by a search where it is long.
 */
export const worthiest = (job: CutJob, counts: readonly number[], worth: readonly number[], limit: number): Worthiest => {
  const places = worth.flatMap((value, place) => (value > 0 && counts[place]! > 0 ? [place] : []));
  return places.length * (job.stock + 1) <= TABLE_LIMIT
    ? byTable(job, counts, worth, places, limit)
    : bySearch(job, counts, worth, places, limit);
};
