import { Busy } from "./busy";
import { type Clock, NEVER, unitsBefore } from "./clock";
import type { Working } from "./clockStore";
import { machinesFrom, needAt, restedFrom, unbrokenEnd } from "./fit";
import { endOf, startAt } from "./labour";
import { crewSlot } from "./placeCrew";
import type { Schedule, Slot } from "./schedule";

const NOBODY = new Busy();

/** Earliest place for a task from `from` on, gaps included; null when there is none. `choice` is the maker wanted, or -1. */
export function taskSlot(schedule: Schedule, node: number, from: number, overtime: boolean, choice: number): Slot | null {
  const compiled = schedule.compiled;
  const task = compiled.tasks[node]!;
  const seats = compiled.seats[node]!;
  const machines = compiled.openMachines[node]!;
  if (seats.length === 0) {
    if (task.minutes === 0) return from <= compiled.problem.horizon ? { start: from, end: from, crew: [], overtime: false } : null;
    const found = firstFit(schedule, node, compiled.clocks.ofMachines(machines), NOBODY, NOBODY, task.minutes, from, NEVER);
    return found === null ? null : { ...found, crew: [], overtime: false };
  }
  if (seats.length > 1) return crewSlot(schedule, node, from, overtime);
  const { skill } = seats[0]!;
  if (choice >= 0) {
    const slot = slotOf(schedule, node, { maker: choice, skill }, machines, from, overtime, NEVER);
    if (slot !== null) return slot;
  }
  let best = null as Slot | null;
  for (const maker of compiled.skilled[skill]!) {
    const before: number = best === null ? NEVER : best.end;
    best = slotOf(schedule, node, { maker, skill }, machines, from, overtime, before) ?? best;
  }
  return best;
}

function slotOf(
  schedule: Schedule,
  node: number,
  person: Working,
  machines: readonly number[],
  from: number,
  overtime: boolean,
  before: number,
): Slot | null {
  const { clocks, problem, tasks } = schedule.compiled;
  const pace = problem.makers[person.maker]!.pace[person.skill]!;
  const clock = clocks.ofMakerAt(person.maker, machines, overtime);
  const need = needAt(tasks[node]!.minutes, pace);
  const { work: busy, appointments } = schedule;
  const found = firstFit(schedule, node, clock, busy[person.maker]!, appointments[person.maker]!, need, from, before);
  return found === null ? null : { ...found, crew: [person], overtime };
}

/** First place on one clock that ends before `before`, between the tasks already there and with its machines free. */
function firstFit(
  schedule: Schedule,
  node: number,
  clock: Clock,
  busy: Busy,
  appointments: Busy,
  need: number,
  from: number,
  before: number,
): { start: number; end: number } | null {
  const pauses = schedule.compiled.tasks[node]!.pauses;
  const straining = schedule.compiled.straining[node]!;
  let t = from;
  let k = busy.firstEndingAfter(t);
  for (;;) {
    let next = NEVER;
    let unitsAt = unitsBefore(clock, t);
    for (; k < busy.starts.length; k++) {
      next = busy.starts[k]!;
      if (next > t && unitsBefore(clock, next) - unitsAt >= need) break;
      t = busy.ends[k]!;
      if (t >= before) return null;
      unitsAt = unitsBefore(clock, t);
      next = NEVER;
    }
    t = startAt(clock, appointments, t);
    if (t >= before) return null;
    if (t >= next) {
      t = busy.ends[k]!;
      continue;
    }
    const end = pauses ? endOf(clock, appointments, t, need, straining) : unbrokenEnd(clock, appointments, t, need, straining);
    if (end >= before) return null;
    const again = end < 0 ? -end : end > next ? busy.ends[k]! : againFrom(schedule, node, busy, k, t, end);
    if (again < 0) return { start: t, end };
    t = again;
    while (k < busy.ends.length && busy.ends[k]! <= t) k++;
  }
}

/** -1 when machines and rests allow [start, end); else the minute from which to look again. */
function againFrom(schedule: Schedule, node: number, busy: Busy, next: number, start: number, end: number): number {
  const straining = schedule.compiled.straining[node]!;
  const machines = machinesFrom(schedule, node, start, end);
  return straining === null ? machines : Math.max(machines, restedFrom(schedule, busy, next, start, end, straining.rest));
}
