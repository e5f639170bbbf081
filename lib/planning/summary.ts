import type { Skill } from "#lib/labour/skills";
import type { LevellingAnswer } from "#lib/levelling/problem";
import type { PurchaseList } from "#lib/purchasing/purchase";
import type { Minutes } from "#lib/units/quantities";
import { toWall } from "./axis";
import { makerCosts } from "./labourCost";
import type { Prepared } from "./prepared";
import type { GarmentState, PlannedFitting, PlannedTask, PlanSummary } from "./stagingPlan";

/** The plan in figures. */
export const summaryOf = (
  prepared: Prepared,
  answer: LevellingAnswer,
  parts: {
    readonly tasks: readonly PlannedTask[];
    readonly fittings: readonly PlannedFitting[];
    readonly garmentStates: readonly GarmentState[];
    readonly purchase: PurchaseList;
  },
): PlanSummary => ({
  garments: prepared.garments.length,
  tasks: parts.tasks.length,
  fittings: parts.fittings.length,
  visits: answer.plan.visits.length,
  minutesBySkill: minutesBySkill(prepared),
  finish: toWall(prepared.axis, answer.measures.finish),
  finishBound: toWall(prepared.axis, answer.bounds.finish),
  lateGarments: parts.garmentStates.filter(({ minutesLate }) => minutesLate > 0).length,
  weightedLateness: answer.measures.weightedLateness,
  latenessBound: answer.bounds.weightedLateness,
  overtimeMinutes: answer.measures.overtimeMinutes,
  overtimeBound: answer.bounds.overtimeMinutes,
  labourCost: makerCosts(prepared.problem, answer.plan).reduce((sum, { cost }) => sum + cost, 0),
  materialCost: parts.purchase.total,
  seed: answer.seed,
  rounds: answer.rounds,
  schedules: answer.schedules,
  rule: answer.rule,
});

/** Standard minutes of work and of fittings. */
const minutesBySkill = ({ problem }: Prepared): Partial<Record<Skill, Minutes>> => {
  const minutes = new Map<string, Minutes>();
  for (const node of problem.nodes)
    for (const skill of node.kind === "fitting" ? [node.fitterSkill] : node.crew.map((member) => member.skill))
      minutes.set(problem.skills[skill]!, (minutes.get(problem.skills[skill]!) ?? 0) + node.minutes);
  return Object.fromEntries(problem.skills.flatMap((skill) => (minutes.has(skill) ? [[skill, minutes.get(skill)]] : [])));
};
