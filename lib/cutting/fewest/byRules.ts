import { fillFully } from "./fillFully";
import { bestFit, fillInTurn } from "./fit";
import { type CutJob, type CutStocks, stocksIn } from "./job";
import { reduce } from "./reduce";

/** What rules of thumb find at once: stocks that lose nothing, the pieces left beside them, and plans for those. */
export interface ByRules {
  readonly settled: readonly CutStocks[];
  readonly left: readonly number[];
  readonly plans: readonly (readonly CutStocks[])[];
  /** The plan of fewest stocks. */
  readonly best: readonly CutStocks[];
}

export const byRules = (job: CutJob): ByRules => {
  const { settled, left } = reduce(job);
  const plans = [fillInTurn(job, left), bestFit(job, left), fillFully(job, left)];
  return { settled, left, plans, best: plans.reduce((a, b) => (stocksIn(b) < stocksIn(a) ? b : a)) };
};
