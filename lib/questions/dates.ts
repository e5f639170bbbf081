import { addDays, dayNumber, mondayOf, plainDate } from "#lib/calendar/days";
import { MINUTES_PER_DAY, type PlainDate, type WallMinute } from "#lib/calendar/plainDate";
import { type Axis, toAxis } from "#lib/planning/axis";
import type { Milestone, MilestoneKind, Staging } from "#lib/staging/staging";

/** Minute of the problem at which a day begins. */
export const dayOnAxis = (axis: Axis, day: PlainDate): number => toAxis(axis, dayNumber(day) * MINUTES_PER_DAY);

export const milestoneWall = ({ date, at }: Milestone): WallMinute => dayNumber(date) * MINUTES_PER_DAY + at;

/** The milestone named, else the first of the kind, else the last of all. */
export const milestoneMeant = ({ milestones }: Staging, code: string | null, kind: MilestoneKind): Milestone => {
  const inTime = [...milestones].sort((a, b) => milestoneWall(a) - milestoneWall(b));
  return inTime.find((one) => (code === null ? one.kind === kind : one.code === code)) ?? inTime.at(-1)!;
};

/** Days [from, to). */
export interface DaySpan {
  readonly from: PlainDate;
  readonly to: PlainDate;
}

/** The week a day is in, from Monday; of the present week only what is left of it. */
export const weekFrom = (day: PlainDate, today: PlainDate): DaySpan => {
  const monday = plainDate(mondayOf(dayNumber(day)));
  return { from: today > monday ? today : monday, to: addDays(monday, 7) };
};

/** Whether a minute of the wall clock lies in the days. */
export const isWithin = ({ from, to }: DaySpan, wall: WallMinute): boolean =>
  wall >= dayNumber(from) * MINUTES_PER_DAY && wall < dayNumber(to) * MINUTES_PER_DAY;
