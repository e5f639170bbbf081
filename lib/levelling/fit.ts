import { Busy } from "./busy";
import { type Clock, NEVER, nextWorking, stretchAt } from "./clock";
import { UNITS } from "./clockStore";
import { work } from "./labour";
import type { Schedule } from "./schedule";

const NOBODY = new Busy();

/** Work units that one maker at this pace needs, at speed 1 a unit. */
export const needAt = (minutes: number, pace: number): number => Math.ceil((minutes * UNITS) / pace);

/** End of a task that may not pause; when it does not fit here, minus the minute from which to look again. */
export function unbrokenEnd(
  clock: Clock,
  appointments: Busy,
  start: number,
  need: number,
  straining: { readonly run: number; readonly rest: number } | null,
): number {
  const i = stretchAt(clock, start);
  if (i === clock.ends.length) return NEVER;
  const end = work(clock, NOBODY, start, need, straining, null);
  const runEnd = clock.runEnds[i]!;
  if (end > runEnd) return -nextWorking(clock, runEnd);
  const a = appointments.firstEndingAfter(start);
  return a < appointments.starts.length && appointments.starts[a]! < end ? -appointments.ends[a]! : end;
}

/** -1 when the machines are free over [start, end); else the minute from which to look again. */
export function machinesFrom(schedule: Schedule, node: number, start: number, end: number): number {
  let again = -1;
  for (const { machine, count } of schedule.compiled.tasks[node]!.machines) {
    again = Math.max(again, schedule.machines[machine]!.conflict(start, end, count));
  }
  return again;
}

/** Straining work of one maker keeps its rest from other straining work: -1 when it does, else where to look again. */
export function restedFrom(schedule: Schedule, busy: Busy, next: number, start: number, end: number, rest: number): number {
  const { straining, longestRest } = schedule.compiled;
  for (let i = next - 1; i >= 0 && busy.ends[i]! + longestRest > start; i--) {
    const other = straining[busy.ids[i]!];
    if (other !== null && other !== undefined && busy.ends[i]! + Math.max(rest, other.rest) > start) {
      return busy.ends[i]! + Math.max(rest, other.rest);
    }
  }
  for (let i = next; i < busy.starts.length && busy.starts[i]! < end + longestRest; i++) {
    const other = straining[busy.ids[i]!];
    if (other !== null && other !== undefined && busy.starts[i]! < end + Math.max(rest, other.rest)) return busy.ends[i]!;
  }
  return -1;
}
