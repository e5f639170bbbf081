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
    constructions: versionsUsed(works),
  },
});

/** Versions garments are made by, by construction: mostly one of each. */
const versionsUsed = (works: StagingPlan["works"]): Readonly<Record<string, readonly number[]>> => {
  const used = works.flatMap(({ construction }) => construction ?? []);
  const codes = [...new Set(used.map(({ code }) => code))].sort();
  const versionsOf = (of: string) =>
    [...new Set(used.flatMap(({ code, version }) => (code === of ? [version] : [])))].sort((a, b) => a - b);
  return Object.fromEntries(codes.map((code) => [code, versionsOf(code)]));
};
