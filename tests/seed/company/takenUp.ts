import { dayNumber } from "#lib/calendar/days";
import { MINUTES_PER_DAY } from "#lib/calendar/plainDate";
import { minutesWithin } from "#lib/labour/intervals";
import type { StagingPlan } from "#lib/planning/stagingPlan";

/** Part of these makers' ordinary hours until the dress parade that the plan fills, fittings included. */
export const takenUp = ({ staging, problem, answer, dayZero }: StagingPlan, makers: readonly string[]): number => {
  const parade = staging.milestones.find(({ kind }) => kind === "dress parade")!;
  const until = { start: 0, end: (dayNumber(parade.date) - dayZero) * MINUTES_PER_DAY + parade.at };
  let worked = 0;
  let free = 0;
  for (const [index, { id, calendar }] of problem.makers.entries()) {
    if (!makers.includes(id)) continue;
    free += minutesWithin(
      until,
      calendar.filter(({ overtime }) => !overtime),
    );
    for (const placement of answer.plan.placed)
      if (placement?.makers.some(({ maker }) => maker === index)) worked += minutesWithin(until, placement.stretches);
  }
  return worked / free;
};
