import { dayNumber, plainDate, weekdayOf } from "#lib/calendar/days";
import { type DayNumber, MINUTES_PER_DAY } from "#lib/calendar/plainDate";
import { absentIntervals } from "#lib/labour/calendars";
import type { Maker } from "#lib/labour/workroom";
import type { Interval } from "#lib/levelling/problem";
import type { Staging } from "#lib/staging/staging";
import { OVERTIME_A_DAY, type Remedy } from "./remedy";

/** No remedy reaches further than this many days. */
const FURTHEST = 730;

/** The makers a remedy adds: casuals with one skill at full pace, and the hours, productive share and pay of the best at it, of equals the cheapest. Null: nobody to go by. */
export const helpers = (staging: Staging, { skill, count, days, from }: Remedy & { kind: "maker" }): readonly Maker[] | null => {
  const pace = (maker: Maker) => maker.skills[skill] ?? 0;
  const [like] = [...staging.makers].sort((a, b) => pace(b) - pace(a) || a.costPerHour - b.costPerHour);
  if (!like) return null;
  const works = (day: DayNumber) => isWorked(like, staging, day);
  const first = nextDay(dayNumber(from), works);
  let last = first;
  for (let left = days - 1; left > 0 && last < first + FURTHEST; left--) last = nextDay(last + 1, works);
  return Array.from({ length: count }, (_, at) => ({
    ...like,
    code: `(more hands ${at + 1})`,
    name: `More hands ${at + 1}`,
    employment: "casual" as const,
    skills: { [skill]: 1000 },
    overtime: [],
    reservedMinutesPerWeek: 0,
    paceFrom: [],
    starts: plainDate(first),
    ends: plainDate(last),
  }));
};

/** Overtime straight after the last hour of each of the maker's working days, two hours at most, until it comes to what is asked. */
export const eveningsOf = (maker: Maker, staging: Staging, { minutes, from }: Remedy & { kind: "overtime" }): readonly Interval[] => {
  const evenings: Interval[] = [];
  let left = minutes;
  for (let day = dayNumber(from); left > 0 && day < dayNumber(from) + FURTHEST; day++) {
    if (!isWorked(maker, staging, day)) continue;
    const last = Math.max(...maker.hours.filter(({ weekday }) => weekday === weekdayOf(day)).map(({ to }) => to));
    const start = day * MINUTES_PER_DAY + last;
    evenings.push({ start, end: Math.min((day + 1) * MINUTES_PER_DAY, start + Math.min(left, OVERTIME_A_DAY)) });
    left -= OVERTIME_A_DAY;
  }
  return evenings;
};

/** Whether she has hours on that day, is with us, and neither is she away all day nor the workroom closed. */
const isWorked = (maker: Maker, { absences }: Staging, day: DayNumber): boolean =>
  maker.hours.some(({ weekday }) => weekday === weekdayOf(day)) &&
  (maker.starts === null || dayNumber(maker.starts) <= day) &&
  (maker.ends === null || dayNumber(maker.ends) >= day) &&
  !absences.some(
    (absence) =>
      (absence.maker === null || absence.maker === maker.code) &&
      absentIntervals(absence).some(({ start, end }) => start <= day * MINUTES_PER_DAY && end >= (day + 1) * MINUTES_PER_DAY),
  );

const nextDay = (from: DayNumber, works: (day: DayNumber) => boolean): DayNumber => {
  for (let day = from; day < from + FURTHEST; day++) if (works(day)) return day;
  return from;
};
