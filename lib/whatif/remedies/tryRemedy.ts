import type { WallMinute } from "#lib/calendar/plainDate";
import { totalMinutes } from "#lib/labour/intervals";
import { axisOf } from "#lib/planning/axisOf";
import { makerCosts } from "#lib/planning/labourCost";
import { type PlanOptions, planStaging } from "#lib/planning/planStaging";
import { carriedPlan } from "#lib/planning/restore";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { ok, type Result } from "#lib/result";
import type { MinorUnits, Minutes } from "#lib/units/quantities";
import { compareStagingPlans, type GarmentChange } from "../comparePlans";
import { applyRemedy, type Remedied } from "./applyRemedy";
import type { Remedy } from "./remedy";

/** What a plan comes to. */
export interface PlanFigures {
  readonly lateGarments: number;
  /** Minutes late of all garments together, each by its weight: what plans are judged by first. */
  readonly weightedLateness: number;
  readonly unplaced: number;
  readonly finish: WallMinute;
  readonly overtimeMinutes: Minutes;
  /** Labour and materials, with what the remedy itself costs as far as that is known. */
  readonly cost: MinorUnits;
}

/** What comes of a remedy: figures of the plan found with it, and the garments it moves across their dates. */
export interface Tried {
  readonly figures: PlanFigures;
  /** Late before and in time now; in time before and late now; late still, but by less. */
  readonly mended: readonly string[];
  readonly spoiled: readonly string[];
  readonly eased: readonly string[];
  /** Tasks and fittings that change their day or maker. */
  readonly moved: number;
}

/** How remedies are planned: the day, and a search with fixed rounds and seed, so that the plans differ by the remedies alone. */
export type TryOptions = Omit<PlanOptions, "current" | "out" | "overtime">;

/** The plan searched on for as long as with a remedy: what each is to be compared with. */
export const untouched = (plan: StagingPlan, options: TryOptions): Promise<StagingPlan> =>
  planned(plan, { staging: plan.staging, options: {}, added: [] }, options);

/** The plan changed by a remedy: repaired first, then searched on. Fails when the staging has not what the remedy speaks of. */
export const tryRemedy = async (plan: StagingPlan, remedy: Remedy, options: TryOptions): Promise<Result<Tried, string>> => {
  const remedied = applyRemedy(plan.staging, remedy);
  if (!remedied.ok) return remedied;
  const after = await planned(plan, remedied.value, options);
  const { garments } = compareStagingPlans(plan, after);
  const named = (holds: (was: number, is: number) => boolean) =>
    garments.flatMap((change) => (crosses(change, holds) ? [change.after!.number] : []));
  return ok({
    figures: figuresOf(after, extraCost(after, remedy, remedied.value)),
    mended: named((was, is) => was > 0 && is === 0),
    spoiled: named((was, is) => was === 0 && is > 0),
    eased: named((was, is) => is > 0 && is < was),
    moved: after.answer.measures.moved,
  });
};

/** Figures of a plan with no remedy. */
export const figuresOf = ({ summary, answer }: StagingPlan, extra: MinorUnits = 0): PlanFigures => ({
  lateGarments: summary.lateGarments,
  weightedLateness: summary.weightedLateness,
  unplaced: answer.plan.unplaced.length,
  finish: summary.finish,
  overtimeMinutes: summary.overtimeMinutes,
  cost: summary.labourCost + summary.materialCost + extra,
});

/** Below 0 when the first plan is the better one: nothing without a place, then lateness, overtime, money. */
export const compareFigures = (a: PlanFigures, b: PlanFigures): number =>
  a.unplaced - b.unplaced || a.weightedLateness - b.weightedLateness || a.overtimeMinutes - b.overtimeMinutes || a.cost - b.cost;

const planned = (plan: StagingPlan, remedied: Remedied, options: TryOptions): Promise<StagingPlan> => {
  const from = { problem: plan.problem, nodes: plan.nodes, axis: axisOf(plan) };
  return planStaging(remedied.staging, {
    ...options,
    ...remedied.options,
    current: (prepared) => carriedPlan(from, plan.answer, prepared),
  });
};

const crosses = ({ before, after }: GarmentChange, holds: (was: number, is: number) => boolean): boolean =>
  before !== null && after !== null && holds(before.minutesLate, after.minutesLate);

/** An outworker's price; and the hours for which more hands are paid though the plan has nothing for them. */
const extraCost = ({ problem, answer }: StagingPlan, remedy: Remedy, { added }: Remedied): MinorUnits => {
  if (remedy.kind === "outwork") return remedy.price * remedy.garments.length;
  if (added.length === 0) return 0;
  const worked = makerCosts(problem, answer.plan);
  return problem.makers.reduce((sum, { id, calendar, costPerHour }, at) => {
    if (!added.includes(id)) return sum;
    const idle = totalMinutes(calendar) - worked[at]!.minutes;
    return sum + Math.round((idle * costPerHour) / 60);
  }, 0);
};
