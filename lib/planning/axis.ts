import { type DayNumber, MINUTES_PER_DAY, type WallMinute } from "#lib/calendar/plainDate";
import { addElapsed, elapsedBetween } from "#lib/calendar/zone";
import type { Interval } from "#lib/levelling/problem";

/**
 * The engine's axis: minutes that really pass from `dayZero` 00:00, so that a hem hangs its full day over a night of clock change.
 * Until the first change it is the wall clock itself, counted from `dayZero`.
 */
export interface Axis {
  readonly dayZero: DayNumber;
  /** Clock changes inside the axis, in order. */
  readonly changes: readonly ClockChange[];
}

/** From engine minute `at` the wall clock shows `ahead` minutes more than have passed; no minute it skips or repeats is at or after `wall`. */
interface ClockChange {
  readonly at: number;
  readonly wall: WallMinute;
  readonly ahead: number;
}

/** Days looked at together: no zone changes its clocks twice in a week. */
const STRIDE = 7;

export const makeAxis = (dayZero: DayNumber, lastDay: DayNumber, zone: string): Axis => {
  const zero = dayZero * MINUTES_PER_DAY;
  const aheadAfter = (elapsed: number) => addElapsed(zero, elapsed, zone) - zero - elapsed;
  const changes: ClockChange[] = [];
  let ahead = 0;
  let before = 0;
  for (let day = dayZero; day < lastDay; day += STRIDE) {
    const end = elapsedBetween(zero, (day + STRIDE) * MINUTES_PER_DAY, zone);
    let at = end;
    if (aheadAfter(end) === ahead) before = end;
    while (at - before > 1) {
      const middle = Math.floor((before + at) / 2);
      if (aheadAfter(middle) === ahead) before = middle;
      else at = middle;
    }
    if (before < end) {
      const after = aheadAfter(at);
      changes.push({ at, wall: zero + at + Math.max(ahead, after), ahead: after });
      ahead = after;
      before = end;
    }
  }
  return { dayZero, changes };
};

/** The wall clock at a minute of the axis. */
export const toWall = (axis: Axis, minute: number): WallMinute =>
  axis.dayZero * MINUTES_PER_DAY + minute + (axis.changes.findLast((change) => minute >= change.at)?.ahead ?? 0);

/** The minute of the axis for a time of the wall clock: one the clock skips counts as the jump, one it shows twice as the first of the two. */
export const toAxis = (axis: Axis, wall: WallMinute): number => {
  const past = axis.changes.findLastIndex((change) => wall >= change.wall);
  const minute = wall - axis.dayZero * MINUTES_PER_DAY - (axis.changes[past]?.ahead ?? 0);
  const next = axis.changes[past + 1];
  const skips = next !== undefined && next.ahead > (axis.changes[past]?.ahead ?? 0);
  return skips ? Math.min(minute, next.at) : minute;
};

/** Times of the wall clock on the axis, whatever else they carry. */
export const onAxis = <T extends Interval>(axis: Axis, intervals: readonly T[]): T[] =>
  intervals.map((one) => ({ ...one, start: toAxis(axis, one.start), end: toAxis(axis, one.end) })).filter((one) => one.start < one.end);
