import { answerDay } from "#lib/approvals/answerDay";
import { dayNumber, mondayOf } from "#lib/calendar/days";
import { type DayNumber, MINUTES_PER_DAY } from "#lib/calendar/plainDate";
import type { OpenDay } from "#lib/calendar/workingDays";
import { type Days, workroomHours } from "#lib/labour/calendars";
import { totalMinutes } from "#lib/labour/intervals";
import type { Staging } from "#lib/staging/staging";
import type { Minutes } from "#lib/units/quantities";
import type { Approvals } from "./approvals";

/** Open minutes of the workroom on the fullest day of its week: what a working day of approval counts as. */
export const workingDay = ({ makers }: Staging): Minutes => {
  const monday = mondayOf(0);
  const usual = makers.map((maker) => ({ ...maker, starts: null, ends: null }));
  const open = (day: number) => totalMinutes(workroomHours(usual, [], { from: monday + day, to: monday + day + 1 }));
  return Math.max(...[0, 1, 2, 3, 4, 5, 6].map(open));
};

/** Days on which anybody works. */
export const openDays = ({ makers, absences }: Pick<Staging, "makers" | "absences">, days: Days): OpenDay => {
  const open = new Set(workroomHours(makers, absences, days).map(({ start }) => Math.floor(start / MINUTES_PER_DAY)));
  return (day) => open.has(day);
};

/** By node, the first day on which work may go on after an answer whose day is known; one that is overdue is taken to come today. */
export const answersGiven = ({ approvalAt }: Approvals, staging: Staging, today: DayNumber, until: DayNumber): Map<number, DayNumber> => {
  if (approvalAt.size === 0) return new Map();
  const asked = [...approvalAt.values()].flatMap(({ askedOn }) => (askedOn === null ? [] : dayNumber(askedOn)));
  const isOpen = openDays(staging, { from: Math.min(today, ...asked), to: until });
  return new Map(
    [...approvalAt].flatMap(([node, approval]) => {
      const day = answerDay(approval, today, isOpen);
      return day === null ? [] : [[node, Math.max(day, today) + 1] as const];
    }),
  );
};
