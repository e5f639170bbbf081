import { measuresOf } from "./measures";
import { planOf } from "./planOf";
import type { Measures, Plan } from "./problem";
import type { Schedule } from "./schedule";

/** A schedule judged in the order of importance; what is dear to compute only when the rest is equal. */
export class Score {
  readonly unplaced: number;
  readonly lateness: number;
  private made: { readonly plan: Plan; readonly measures: Measures } | null = null;

  constructor(readonly schedule: Schedule) {
    const { problem } = schedule.compiled;
    this.unplaced = schedule.unplaced.reduce((count, why) => (why === null ? count : count + 1), 0);
    this.lateness = problem.dues.reduce((sum, due) => {
      const end = schedule.isPlaced(due.node) ? schedule.end[due.node]! : problem.horizon;
      return sum + due.weight * Math.max(0, end - due.at);
    }, 0);
  }

  get plan(): Plan {
    return this.full().plan;
  }

  get measures(): Measures {
    return this.full().measures;
  }

  private full(): { readonly plan: Plan; readonly measures: Measures } {
    if (this.made === null) {
      const plan = planOf(this.schedule);
      this.made = { plan, measures: measuresOf(this.schedule.compiled.problem, plan) };
    }
    return this.made;
  }
}

/** Below 0 when `a` is the better plan: nothing without a place, then least weighted lateness, overtime, unevenness, change, visits. */
export function compareScores(a: Score, b: Score): number {
  if (a.unplaced !== b.unplaced) return a.unplaced - b.unplaced;
  if (a.lateness !== b.lateness) return a.lateness - b.lateness;
  const [one, other] = [a.measures, b.measures];
  return (
    one.overtimeMinutes - other.overtimeMinutes ||
    one.unevenness - other.unevenness ||
    one.moved - other.moved ||
    one.visits - other.visits ||
    one.finish - other.finish
  );
}
