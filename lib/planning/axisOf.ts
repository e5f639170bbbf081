import { MINUTES_PER_DAY } from "#lib/calendar/plainDate";
import { type Axis, makeAxis } from "./axis";
import type { StagingPlan } from "./stagingPlan";

/** The axis of a plan's problem. */
export const axisOf = ({ dayZero, problem, staging }: Pick<StagingPlan, "dayZero" | "problem" | "staging">): Axis =>
  makeAxis(dayZero, dayZero + Math.ceil(problem.horizon / MINUTES_PER_DAY) + 1, staging.production.zone);
