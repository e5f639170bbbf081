import { showWall } from "#lib/calendar/showDay";
import { lateText } from "#lib/planning/lateText";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { showHours } from "#lib/units/hours";
import { showMoney } from "#lib/units/money";

/** The plan in a few lines: what there is to do, when it ends, what is late and why, what it costs. */
export const summaryLines = ({ summary, staging, garmentStates, answer }: StagingPlan): string => {
  const { currency, words } = staging.production;
  const money = (amount: number) => showMoney(amount, currency, words);
  const hours = Object.entries(summary.minutesBySkill).map(([skill, minutes]) => `${skill} ${showHours(minutes ?? 0)}`);
  const late = garmentStates.filter(({ minutesLate }) => minutesLate > 0);
  return [
    `garments   ${summary.garments}, ${summary.tasks} tasks, ${summary.fittings} fittings in ${summary.visits} visits`,
    `hours      ${hours.join(", ")}`,
    `finish     ${showWall(summary.finish)}`,
    `late       ${late.length === 0 ? "none" : `${late.length} of ${summary.garments}`}`,
    ...late.flatMap((state) => [`  ${state.garment}   ${lateText(state)}`, ...state.why.map((text) => `    ${text}`)]),
    ...(answer.plan.unplaced.length > 0 ? [`unplaced   ${answer.plan.unplaced.length}: see notes.csv`] : []),
    `overtime   ${showHours(summary.overtimeMinutes)}`,
    `cost       labour ${money(summary.labourCost)}, materials ${money(summary.materialCost)}`,
    `search     ${summary.rounds} rounds, ${summary.schedules} schedules, seed ${summary.seed}, ${summary.rule}`,
    "",
  ].join("\n");
};
