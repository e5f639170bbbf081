import { showClock } from "#lib/calendar/clock";
import { dayNumber, plainDate } from "#lib/calendar/days";
import { MINUTES_PER_DAY, type PlainDate } from "#lib/calendar/plainDate";
import { showDay } from "#lib/calendar/showDay";
import type { Interval } from "#lib/levelling/problem";
import type { Table } from "./answer";
import type { DaySpan } from "./dates";

/** Times of a week by day: `15:45-18:30`. */
export const freeByDay = (
  week: DaySpan,
  free: readonly Interval[],
): readonly { readonly day: PlainDate; readonly times: readonly string[] }[] =>
  daysOf(week).map((day) => {
    const zero = dayNumber(day) * MINUTES_PER_DAY;
    const times = free
      .filter(({ start }) => start >= zero && start < zero + MINUTES_PER_DAY)
      .map(({ start, end }) => `${showClock(start - zero)}-${showClock(end - zero)}`);
    return { day, times };
  });

/** When each dancer is free, a column a day; days on which nobody is are left out. */
export const freeTable = (week: DaySpan, dancers: readonly { readonly name: string; readonly free: readonly Interval[] }[]): Table => {
  const rows = dancers.map(({ name, free }) => ({ name, days: freeByDay(week, free) }));
  const shown = daysOf(week).flatMap((day, at) => (rows.some(({ days }) => days[at]!.times.length > 0) ? [{ day, at }] : []));
  return {
    title: "When they are free",
    headings: ["dancer", ...shown.map(({ day }) => showDay(day))],
    rows: rows.map(({ name, days }) => [name, ...shown.map(({ at }) => days[at]!.times.join(" ") || "no")]),
  };
};

const daysOf = ({ from, to }: DaySpan): PlainDate[] =>
  Array.from({ length: dayNumber(to) - dayNumber(from) }, (_, at) => plainDate(dayNumber(from) + at));
