import { Busy } from "./busy";
import { NEVER, nextWorking } from "./clock";
import { UNITS, type Working } from "./clockStore";
import { matchCrew } from "./crewMatching";
import { machinesFrom, needAt, restedFrom, unbrokenEnd } from "./fit";
import { endOf, startAt } from "./labour";
import type { Schedule, Slot } from "./schedule";

/** Earliest place found for a task of several makers: at each minute where somebody becomes free, match who is free to the seats. */
export function crewSlot(schedule: Schedule, node: number, from: number, overtime: boolean): Slot | null {
  const { compiled } = schedule;
  const seats = compiled.seats[node]!;
  const machines = compiled.openMachines[node]!;
  const people = peopleFor(schedule, node);
  let t = from;
  while (t < NEVER) {
    let free = people.filter((maker) => freeUntilDone(schedule, node, maker, t, overtime));
    for (;;) {
      const crew = matchCrew(compiled, seats, free);
      if (crew === null) break;
      const fit = togetherAt(schedule, node, crew, machines, t, overtime);
      if (fit.end >= 0) return { start: t, end: fit.end, crew, overtime };
      if (fit.inTheWay < 0) break;
      free = free.filter((maker) => maker !== fit.inTheWay);
    }
    t = nextChange(schedule, node, people, t, overtime);
  }
  return null;
}

function peopleFor(schedule: Schedule, node: number): number[] {
  const people = new Set<number>();
  for (const { skill } of schedule.compiled.seats[node]!) for (const maker of schedule.compiled.skilled[skill]!) people.add(maker);
  const { scarcity } = schedule.compiled;
  return [...people].sort((a, b) => scarcity[a]! - scarcity[b]! || a - b);
}

/** Could this maker begin at `t` and be done, working alone at their best pace, before their next task? */
function freeUntilDone(schedule: Schedule, node: number, maker: number, t: number, overtime: boolean): boolean {
  const { compiled } = schedule;
  const clock = compiled.clocks.ofMaker(maker, overtime);
  const appointments = schedule.appointments[maker]!;
  if (startAt(clock, appointments, t) !== t) return false;
  const busy = schedule.work[maker]!;
  const k = busy.firstEndingAfter(t);
  const next = k < busy.starts.length ? busy.starts[k]! : NEVER;
  if (next <= t) return false;
  const pace = compiled.seats[node]!.reduce((best, { skill }) => Math.max(best, compiled.problem.makers[maker]!.pace[skill] ?? 0), 0);
  const end = endOf(clock, appointments, t, needAt(compiled.tasks[node]!.minutes, pace), compiled.straining[node]!);
  return end < NEVER && end <= next;
}

/** End of the work of this crew from `t`, or -1 with the maker whose next task is in the way (-1: nobody's). */
export function togetherAt(
  schedule: Schedule,
  node: number,
  crew: readonly Working[],
  machines: readonly number[],
  t: number,
  overtime: boolean,
): { end: number; inTheWay: number } {
  const { clocks, tasks, straining } = schedule.compiled;
  const task = tasks[node]!;
  const clock = clocks.ofCrew(crew, machines, overtime);
  const appointments = joined(crew.map(({ maker }) => schedule.appointments[maker]!));
  const need = task.minutes * UNITS;
  const end = task.pauses
    ? endOf(clock, appointments, t, need, straining[node]!)
    : unbrokenEnd(clock, appointments, t, need, straining[node]!);
  if (end < 0 || end >= NEVER || startAt(clock, appointments, t) !== t) return { end: -1, inTheWay: -1 };
  for (const { maker } of crew) {
    const busy = schedule.work[maker]!;
    const rest = straining[node]?.rest ?? -1;
    if (!busy.isFree(t, end) || (rest >= 0 && restedFrom(schedule, busy, busy.firstEndingAfter(t), t, end, rest) >= 0)) {
      return { end: -1, inTheWay: maker };
    }
  }
  return machinesFrom(schedule, node, t, end) < 0 ? { end, inTheWay: -1 } : { end: -1, inTheWay: -1 };
}

/** Appointments of several people as one list. */
export function joined(lists: readonly Busy[]): Busy {
  if (lists.length === 1) return lists[0]!;
  const spans = lists.flatMap((list) => list.starts.map((start, i) => ({ start, end: list.ends[i]! }))).sort((a, b) => a.start - b.start);
  const all = new Busy();
  for (const { start, end } of spans) {
    const last = all.ends.length - 1;
    if (last >= 0 && start <= all.ends[last]!) all.ends[last] = Math.max(all.ends[last]!, end);
    else all.add(start, end, -1);
  }
  return all;
}

/** Next minute after `t` at which somebody or a machine may have become free. */
function nextChange(schedule: Schedule, node: number, people: readonly number[], t: number, overtime: boolean): number {
  const { clocks, tasks, longestRest } = schedule.compiled;
  let next = NEVER;
  const consider = (at: number): void => {
    if (at > t && at < next) next = at;
  };
  for (const maker of people) {
    const busy = schedule.work[maker]!;
    const appointments = schedule.appointments[maker]!;
    const clock = clocks.ofMaker(maker, overtime);
    for (const list of [busy, appointments]) {
      const i = list.firstEndingAfter(t);
      if (i < list.ends.length) consider(nextWorking(clock, list.ends[i]!));
      if (longestRest > 0 && i > 0) consider(nextWorking(clock, list.ends[i - 1]! + longestRest));
    }
    consider(nextWorking(clock, t + 1) > t + 1 ? nextWorking(clock, t + 1) : nextStretch(clock, t));
  }
  for (const { machine } of tasks[node]!.machines) consider(schedule.machines[machine]!.nextChange(t));
  return next;
}

function nextStretch(clock: { readonly starts: Int32Array }, t: number): number {
  let low = 0;
  let high = clock.starts.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (clock.starts[middle]! <= t) low = middle + 1;
    else high = middle;
  }
  return low < clock.starts.length ? clock.starts[low]! : NEVER;
}
