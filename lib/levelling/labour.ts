import type { Busy } from "./busy";
import { advance, type Clock, NEVER, nextWorking, stretchAt, unitsBefore } from "./clock";
import type { Interval } from "./problem";

/** Longest run of straining work and the rest after it. */
export interface Straining {
  readonly run: number;
  readonly rest: number;
}

/** First minute at or after `at` that is worked and not taken by an appointment, or NEVER. */
export function startAt(clock: Clock, appointments: Busy, at: number): number {
  let t = nextWorking(clock, at);
  let i = appointments.firstEndingAfter(t);
  while (t < NEVER && i < appointments.starts.length && appointments.starts[i]! <= t) {
    t = nextWorking(clock, appointments.ends[i]!);
    i = appointments.firstEndingAfter(t);
  }
  return t;
}

/** End of a task that pauses and begins at `start`, or NEVER. */
export function endOf(clock: Clock, appointments: Busy, start: number, need: number, straining: Straining | null): number {
  if (straining !== null) return work(clock, appointments, start, need, straining, null);
  let end = advance(clock, start, need);
  if (appointments.ends.length === 0) return end;
  // Each appointment on the way takes its own working time off: the end moves by as much.
  let more = need;
  for (let i = appointments.firstEndingAfter(start); i < appointments.starts.length && appointments.starts[i]! < end; i++) {
    more += unitsBefore(clock, appointments.ends[i]!) - unitsBefore(clock, Math.max(start, appointments.starts[i]!));
    end = advance(clock, start, more);
  }
  return end;
}

/**
 * Follow the clock from `start` until `need` units are done, over breaks, appointments and the rests of straining work;
 * `into` receives the stretches worked. A break shorter than the rest does not end a run.
 */
export function work(
  clock: Clock,
  appointments: Busy,
  start: number,
  need: number,
  straining: Straining | null,
  into: Interval[] | null,
): number {
  let t = start;
  let left = need;
  let ran = 0;
  let stopped = -1;
  while (left > 0) {
    const i = stretchAt(clock, t);
    if (i === clock.ends.length) return NEVER;
    const from = Math.max(t, clock.starts[i]!);
    const next = appointments.firstEndingAfter(from);
    const appointment = next < appointments.starts.length ? appointments.starts[next]! : NEVER;
    if (appointment <= from) {
      t = appointments.ends[next]!;
      continue;
    }
    let to = Math.min(clock.ends[i]!, appointment);
    if (straining !== null) {
      if (stopped >= 0 && from - stopped >= straining.rest) ran = 0;
      if (ran >= straining.run) {
        t = stopped + straining.rest;
        continue;
      }
      to = Math.min(to, from + straining.run - ran);
    }
    const rate = clock.rates[i]!;
    if ((to - from) * rate >= left) to = from + Math.ceil(left / rate);
    left -= (to - from) * rate;
    if (into !== null) append(into, from, to);
    ran += to - from;
    stopped = to;
    t = to;
  }
  return t;
}

function append(into: Interval[], start: number, end: number): void {
  const last = into.at(-1);
  if (last !== undefined && last.end === start) into[into.length - 1] = { start: last.start, end };
  else into.push({ start, end });
}
