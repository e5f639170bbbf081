import { MINUTES_PER_DAY } from "#lib/calendar/plainDate";
import type { OpenDay } from "#lib/calendar/workingDays";
import { workroomHours } from "#lib/labour/calendars";
import type { Interval } from "#lib/levelling/problem";
import { toWall } from "#lib/planning/axis";
import { axisOf } from "#lib/planning/axisOf";
import type { StagingPlan } from "#lib/planning/stagingPlan";

/** Hours in which anybody works, on the wall clock, over the whole of a plan. */
export const openHours = (plan: Pick<StagingPlan, "dayZero" | "problem" | "staging">): Interval[] => {
  const to = Math.ceil(toWall(axisOf(plan), plan.problem.horizon) / MINUTES_PER_DAY);
  return workroomHours(plan.staging.makers, plan.staging.absences, { from: plan.dayZero, to });
};

/** Days on which anybody works. */
export const openDay = (plan: Pick<StagingPlan, "dayZero" | "problem" | "staging">): OpenDay => {
  const open = new Set(openHours(plan).map(({ start }) => Math.floor(start / MINUTES_PER_DAY)));
  return (day) => open.has(day);
};
