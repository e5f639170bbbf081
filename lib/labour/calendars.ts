import { dayNumber, mondayOf, weekdayOf } from "#lib/calendar/days";
import { type DayNumber, MINUTES_PER_DAY } from "#lib/calendar/plainDate";
import type { Interval, Stretch } from "#lib/levelling/problem";
import type { Minutes, PerMille } from "#lib/units/quantities";
import { merged, without } from "./intervals";
import type { Absence, Maker, WeekHours } from "./workroom";

/** Days [from, to) a calendar is made for. */
export interface Days {
  readonly from: DayNumber;
  readonly to: DayNumber;
}

/**
 * When a maker works, on the wall clock: weekly hours and overtime from her first day to her last, less absences and closed days.
 * The minutes reserved for repairs of the repertoire are the last ordinary ones of each week, and are left out.
 * Speed is the productive share times the pace of the day. `asked` are hours of overtime on certain days, beyond those of each week.
 */
export const makerCalendar = (maker: Maker, absences: readonly Absence[], days: Days, asked: readonly Interval[] = []): Stretch[] => {
  const away = absences.filter((absence) => absence.maker === null || absence.maker === maker.code).flatMap(absentIntervals);
  const present = (hours: readonly WeekHours[]) => without(hoursOfDays(hours, employedDays(maker, days)), away);
  const ordinary = present(maker.hours);
  const overtime = without([...present(maker.overtime), ...without(asked, away)], ordinary);
  const working = keepBack(ordinary, maker.reservedMinutesPerWeek);
  return [...paced(maker, working, false), ...paced(maker, overtime, true)].sort((a, b) => a.start - b.start);
};

/** Hours in which the workroom is open: somebody's ordinary hours, on no closed day. Fitting rooms keep them too. */
export const workroomHours = (makers: readonly Maker[], absences: readonly Absence[], days: Days): Interval[] =>
  without(
    makers.flatMap((maker) => hoursOfDays(maker.hours, employedDays(maker, days))),
    absences.filter((absence) => absence.maker === null).flatMap(absentIntervals),
  );

/** Whole days, or the stated part of each day. */
export const absentIntervals = (absence: Absence): Interval[] => {
  const intervals: Interval[] = [];
  for (let day = dayNumber(absence.from); day <= dayNumber(absence.to); day++)
    intervals.push({
      start: day * MINUTES_PER_DAY + (absence.fromTime ?? 0),
      end: day * MINUTES_PER_DAY + (absence.toTime ?? MINUTES_PER_DAY),
    });
  return intervals;
};

const employedDays = (maker: Maker, days: Days): Days => ({
  from: maker.starts === null ? days.from : Math.max(days.from, dayNumber(maker.starts)),
  to: maker.ends === null ? days.to : Math.min(days.to, dayNumber(maker.ends) + 1),
});

const hoursOfDays = (hours: readonly WeekHours[], days: Days): Interval[] => {
  const intervals: Interval[] = [];
  for (let day = days.from; day < days.to; day++)
    for (const { weekday, from, to } of hours)
      if (weekday === weekdayOf(day)) intervals.push({ start: day * MINUTES_PER_DAY + from, end: day * MINUTES_PER_DAY + to });
  return merged(intervals);
};

/** Takes the last `reserved` minutes off every week. */
const keepBack = (intervals: readonly Interval[], reserved: Minutes): Interval[] => {
  const kept: Interval[] = [];
  const left = new Map<DayNumber, Minutes>();
  for (const { start, end } of [...intervals].reverse()) {
    const week = mondayOf(Math.floor(start / MINUTES_PER_DAY));
    const taken = Math.min(left.get(week) ?? reserved, end - start);
    left.set(week, (left.get(week) ?? reserved) - taken);
    if (end - taken > start) kept.push({ start, end: end - taken });
  }
  return kept.reverse();
};

const paced = (maker: Maker, intervals: readonly Interval[], overtime: boolean): Stretch[] =>
  intervals
    .map(({ start, end }) => ({ start, end, overtime, speed: speedOn(maker, Math.floor(start / MINUTES_PER_DAY)) }))
    .filter((stretch) => stretch.speed > 0);

const speedOn = (maker: Maker, day: DayNumber): PerMille => {
  const pace = maker.paceFrom.findLast((from) => dayNumber(from.date) <= day)?.pace ?? 1000;
  return Math.round((maker.productive * pace) / 1000);
};
