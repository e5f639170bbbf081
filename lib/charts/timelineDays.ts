import { plainDate, weekdayOf } from "#lib/calendar/days";
import { type DayMinute, type DayNumber, MINUTES_PER_DAY, type PlainDate, type WallMinute } from "#lib/calendar/plainDate";

export interface TimelineDay {
  readonly date: PlainDate;
  readonly x: number;
  /** Why the workroom is closed; null when it is open. */
  readonly closed: string | null;
  /** A gap lies before it. */
  readonly startsWeek: boolean;
}

/** The axis of the workroom: working days across, so that a week is as wide as it works. */
export interface TimelineDays {
  readonly days: readonly TimelineDay[];
  readonly dayWidth: number;
  /** Never runs backward: a time outside the hours drawn stands at the nearest that is. */
  readonly xOf: (at: WallMinute) => number;
}

export interface TimelineSpan {
  readonly first: DayNumber;
  readonly last: DayNumber;
  /** Weekdays, 1 to 7, that are columns; the others are the gap. */
  readonly weekdays: ReadonlySet<number>;
  readonly closed: (day: DayNumber) => string | null;
  /** Hours a column stands for. */
  readonly from: DayMinute;
  readonly to: DayMinute;
  readonly left: number;
  readonly width: number;
}

const GAP = 10;

export const timelineDays = (span: TimelineSpan): TimelineDays => {
  const numbers: DayNumber[] = [];
  for (let day = span.first; day <= span.last; day++) if (span.weekdays.has(weekdayOf(day))) numbers.push(day);
  const startsWeek = (at: number) => at > 0 && numbers[at]! !== numbers[at - 1]! + 1;
  const gaps = numbers.filter((_, at) => startsWeek(at)).length;
  const dayWidth = Math.max(1, (span.width - gaps * GAP) / Math.max(1, numbers.length));
  const xs: number[] = [];
  let x = span.left;
  for (const at of numbers.keys()) {
    if (startsWeek(at)) x += GAP;
    xs.push(x);
    x += dayWidth;
  }
  const xOf = (wall: WallMinute): number => {
    const day = Math.floor(wall / MINUTES_PER_DAY);
    const at = numbers.findLastIndex((number) => number <= day);
    if (at === -1) return span.left;
    const part = day > numbers[at]! ? 1 : (wall - day * MINUTES_PER_DAY - span.from) / (span.to - span.from);
    return xs[at]! + dayWidth * Math.min(1, Math.max(0, part));
  };
  const days = numbers.map((number, at) => ({
    date: plainDate(number),
    x: xs[at]!,
    closed: span.closed(number),
    startsWeek: startsWeek(at),
  }));
  return { days, dayWidth, xOf };
};
