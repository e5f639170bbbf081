import { Busy } from "./busy";
import { type Clock, makeClock, NEVER, unitsBefore } from "./clock";
import { machinesFrom, needAt, restedFrom, unbrokenEnd } from "./fit";
import { endOf, startAt } from "./labour";
import { crewSlot } from "./placeCrew";
import type { Schedule, Slot } from "./schedule";
import { WorkList } from "./workList";

const NOBODY = new Busy();
const NOTHING = new WorkList(makeClock([]), makeClock([]), 0);

interface Fit {
  start: number;
  end: number;
}

/** Earliest place for a task from `from` on, gaps included; null when there is none. `choice` is the maker wanted, or -1. */
export function taskSlot(schedule: Schedule, node: number, from: number, overtime: boolean, choice: number): Slot | null {
  const compiled = schedule.compiled;
  const task = compiled.tasks[node]!;
  const seats = compiled.seats[node]!;
  const machines = compiled.openMachines[node]!;
  const fit: Fit = { start: -1, end: NEVER };
  if (seats.length === 0) {
    if (task.minutes === 0) return from <= compiled.problem.horizon ? { start: from, end: from, crew: [], overtime: false } : null;
    const found = firstFit(schedule, node, compiled.clocks.ofMachines(machines), NOTHING, NOBODY, false, task.minutes, from, fit);
    return found ? { start: fit.start, end: fit.end, crew: [], overtime: false } : null;
  }
  if (seats.length > 1) return crewSlot(schedule, node, from, overtime);
  const { skill } = seats[0]!;
  const { minutes } = task;
  if (choice >= 0 && fitWith(schedule, node, choice, needAt(minutes, compiled.problem.makers[choice]!.pace[skill]!), from, overtime, fit))
    return { start: fit.start, end: fit.end, crew: [{ maker: choice, skill }], overtime };
  let best = -1;
  const skilled = compiled.skilled[skill]!;
  const paces = compiled.paces[skill]!;
  let pace = 0;
  let need = 0;
  for (let i = 0; i < skilled.length; i++) {
    if (paces[i] !== pace) {
      pace = paces[i]!;
      need = needAt(minutes, pace);
    }
    if (fitWith(schedule, node, skilled[i]!, need, from, overtime, fit)) best = skilled[i]!;
  }
  return best < 0 ? null : { start: fit.start, end: fit.end, crew: [{ maker: best, skill }], overtime };
}

/** The first place with this maker, when it ends before `fit` does. */
function fitWith(schedule: Schedule, node: number, maker: number, need: number, from: number, overtime: boolean, fit: Fit): boolean {
  const { clocks, openMachines } = schedule.compiled;
  const clock = clocks.ofMakerAt(maker, openMachines[node]!, overtime);
  return firstFit(schedule, node, clock, schedule.work[maker]!, schedule.appointments[maker]!, overtime, need, from, fit);
}

/** The first place on one clock, between the tasks already there and with its machines free; false when it does not end before `fit`. */
function firstFit(
  schedule: Schedule,
  node: number,
  clock: Clock,
  busy: WorkList,
  appointments: Busy,
  overtime: boolean,
  need: number,
  from: number,
  fit: Fit,
): boolean {
  const before = fit.end;
  const pauses = schedule.compiled.tasks[node]!.pauses;
  const straining = schedule.compiled.straining[node]!;
  const { starts, ends } = busy;
  let t = from;
  let k = busy.firstEndingAfter(t);
  for (;;) {
    if (k < starts.length && (starts[k]! <= t || unitsBefore(clock, starts[k]!) - unitsBefore(clock, t) < need)) {
      k = busy.firstGap(k + 1, need, overtime, before);
      if (k < 0) return false;
      t = ends[k - 1]!;
    }
    if (t >= before) return false;
    const next = k < starts.length ? starts[k]! : NEVER;
    t = startAt(clock, appointments, t);
    if (t >= before) return false;
    if (t >= next) continue;
    const end = pauses ? endOf(clock, appointments, t, need, straining) : unbrokenEnd(clock, appointments, t, need, straining);
    if (end >= before) return false;
    const again = end < 0 ? -end : end > next ? next : againFrom(schedule, node, busy, k, t, end);
    if (again < 0) {
      fit.start = t;
      fit.end = end;
      return true;
    }
    t = again;
    while (k < ends.length && ends[k]! <= t) k++;
  }
}

/** -1 when machines and rests allow [start, end); else the minute from which to look again. */
function againFrom(schedule: Schedule, node: number, busy: Busy, next: number, start: number, end: number): number {
  const straining = schedule.compiled.straining[node]!;
  const machines = machinesFrom(schedule, node, start, end);
  return straining === null ? machines : Math.max(machines, restedFrom(schedule, busy, next, start, end, straining.rest));
}
