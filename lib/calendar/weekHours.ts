import type { WeekHours } from "#lib/labour/workroom";
import { ok, type Result } from "#lib/result";
import { type Unreadable, unreadable } from "#lib/units/unreadable";
import { readClock, showClock } from "./clock";
import { WEEKDAYS } from "./showDay";

const MEND = "Write it like Mon-Fri 09:00-13:00 14:00-18:00; Sat 09:00-13:00.";
const byTime = (a: WeekHours, b: WeekHours) => a.weekday - b.weekday || a.from - b.from;

/** Reads `Mon-Fri 09:00-13:00 14:00-18:00; Sat 09:00-13:00`, sorted by day and time; empty text is no hours. */
export const readWeekHours = (text: string): Result<readonly WeekHours[], Unreadable> => {
  const hours: WeekHours[] = [];
  for (const part of text.split(";").map((each) => each.trim())) {
    if (part === "") continue;
    const [days = "", ...times] = part.replace(/\s*[-–]\s*/g, "-").split(/[\s,]+(?=\d)/);
    const weekdays = readDays(days);
    if (!weekdays || times.length === 0) return unreadable(`"${part}" is not hours of a week.`, MEND);
    for (const time of times) {
      const [from, to, ...more] = time.split("-").map(readClock);
      if (!from?.ok || !to?.ok || more.length > 0 || from.value >= to.value)
        return unreadable(`"${time}" is not a stretch of a day.`, MEND);
      hours.push(...weekdays.map((weekday) => ({ weekday, from: from.value, to: to.value })));
    }
  }
  hours.sort(byTime);
  const clash = hours.find((each, index) => hours[index - 1]?.weekday === each.weekday && (hours[index - 1]?.to ?? 0) > each.from);
  return clash ? unreadable(`Hours on ${WEEKDAYS[clash.weekday - 1]} overlap in "${text}".`, MEND) : ok(hours);
};

/** `Mon-Fri`, `Mon, Wed` or `Sat` as weekdays; null when unreadable. */
const readDays = (text: string): readonly number[] | null => {
  const days: number[] = [];
  for (const part of text.split(/[,\s]+/)) {
    const [first = 0, last = first, ...more] = part.split("-").map(weekdayNamed);
    if (first === 0 || last < first || more.length > 0) return null;
    for (let day = first; day <= last; day++) days.push(day);
  }
  return days;
};

const weekdayNamed = (name: string): number =>
  /^(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*$/i.test(name)
    ? WEEKDAYS.findIndex((day) => day.toLowerCase() === name.slice(0, 3).toLowerCase()) + 1
    : 0;

/** Days with the same hours together, `Mon-Fri 09:00-13:00 14:00-18:00`; reads back to the same hours. */
export const showWeekHours = (hours: readonly WeekHours[]): string => {
  const groups: { first: number; last: number; times: string }[] = [];
  for (let weekday = 1; weekday <= 7; weekday++) {
    const times = hours
      .filter((each) => each.weekday === weekday)
      .sort(byTime)
      .map((each) => `${showClock(each.from)}-${showClock(each.to)}`)
      .join(" ");
    const before = groups.at(-1);
    if (times !== "" && before?.last === weekday - 1 && before.times === times) before.last = weekday;
    else if (times !== "") groups.push({ first: weekday, last: weekday, times });
  }
  return groups
    .map(({ first, last, times }) => `${WEEKDAYS[first - 1]}${last > first ? `-${WEEKDAYS[last - 1]}` : ""} ${times}`)
    .join("; ");
};
