import type { StagingPlan } from "#lib/planning/stagingPlan";
import { timeCell } from "./cells";

/** The plan in figures, for another program: minutes as whole numbers, money in the smallest unit, times of the wall clock as text. */
export const summaryJson = ({ summary, staging, garmentStates, answer, works }: StagingPlan, version: string) => ({
  production: staging.production.code,
  title: staging.production.title,
  currency: staging.production.currency,
  ...summary,
  finish: timeCell(summary.finish),
  finishBound: timeCell(summary.finishBound),
  boundReasons: answer.bounds.reasons,
  unevenness: answer.measures.unevenness,
  late: garmentStates
    .filter(({ minutesLate }) => minutesLate > 0)
    .map(({ garment, finish, due, minutesLate, daysLate, why }) => ({
      garment,
      finish: timeCell(finish),
      due: timeCell(due),
      minutesLate,
      daysLate,
      why,
    })),
  unplaced: answer.plan.unplaced.length,
  versions: {
    tarlatan: version,
    constructions: Object.fromEntries(
      works
        .flatMap(({ construction }) => (construction ? [[construction.code, construction.version] as const] : []))
        .sort(([a], [b]) => (a < b ? -1 : 1)),
    ),
  },
});
