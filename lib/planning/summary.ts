import { totalMinutes } from "#lib/labour/intervals";
import type { Skill } from "#lib/labour/skills";
import type { LevellingAnswer } from "#lib/levelling/problem";
import type { PurchaseList } from "#lib/purchasing/purchase";
import type { MinorUnits, Minutes } from "#lib/units/quantities";
import { toWall } from "./axis";
import { overtimeOf } from "./planned";
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
  labourCost: labourCost(prepared, answer),
  materialCost: parts.purchase.total + prepared.garments.reduce((sum, { price }) => sum + (price ?? 0), 0),
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

/** Clock minutes worked and fitted at each maker's rate, overtime at hers for overtime; rounded once for each maker. */
const labourCost = (prepared: Prepared, { plan }: LevellingAnswer): MinorUnits => {
  const worked = prepared.problem.makers.map(() => ({ all: 0, over: 0 }));
  for (const placed of plan.placed)
    for (const { maker } of placed?.makers ?? []) {
      const stretches = placed!.stretches.length > 0 ? placed!.stretches : [placed!];
      worked[maker]!.all += totalMinutes(stretches);
      worked[maker]!.over += overtimeOf(prepared, maker, stretches);
    }
  return prepared.problem.makers.reduce((sum, { costPerHour, overtimeCostPerHour }, maker) => {
    const { all, over } = worked[maker]!;
    return sum + Math.round(((all - over) * costPerHour + over * overtimeCostPerHour) / 60);
  }, 0);
};
