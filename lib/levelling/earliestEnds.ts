import { Busy } from "./busy";
import { NEVER, nextWorking, stretchAt } from "./clock";
import type { Compiled } from "./compiled";
import { needAt, unbrokenEnd } from "./fit";
import { endOf, startAt } from "./labour";
import { earliestAfter } from "./lags";
import { within } from "./placeFitting";

const NOTHING = new Busy();

/** The critical path with calendars: the earliest end of each node if it had every maker, machine and room to itself. */
export function earliestEnds(compiled: Compiled): Float64Array {
  const { count, links } = compiled;
  const ends = new Float64Array(count).fill(NEVER);
  const missing = new Int32Array(count);
  for (const after of links.after) missing[after] = missing[after]! + 1;
  const ready: number[] = [];
  for (let node = 0; node < count; node++) if (missing[node] === 0) ready.push(node);
  for (const node of ready) {
    let from = compiled.problem.nodes[node]!.pin === null ? compiled.release[node]! : 0;
    for (let i = links.intoFirst[node]!; i < links.intoFirst[node + 1]!; i++) {
      const link = links.into[i]!;
      const before = ends[links.before[link]!]!;
      from = Math.max(from, before >= NEVER ? NEVER : earliestAfter(compiled, link, before));
    }
    ends[node] = from >= NEVER ? NEVER : endAlone(compiled, node, from);
    for (let i = links.outFirst[node]!; i < links.outFirst[node + 1]!; i++) {
      const after = links.after[links.out[i]!]!;
      missing[after] = missing[after]! - 1;
      if (missing[after] === 0) ready.push(after);
    }
  }
  return ends;
}

function endAlone(compiled: Compiled, node: number, from: number): number {
  const fitting = compiled.fittings[node];
  if (fitting) return fittingEnd(compiled, node, from);
  const task = compiled.tasks[node]!;
  if (task.crew.length === 0)
    return task.minutes === 0
      ? from
      : firstEnd(compiled, node, compiled.clocks.ofMachines(compiled.openMachines[node]!), task.minutes, from);
  return task.crew.reduce((latest, { skill }) => {
    let best: number = NEVER;
    for (const { clock, pace } of compiled.quickest[skill]!)
      best = Math.min(best, firstEnd(compiled, node, clock, needAt(task.minutes, pace), from));
    return Math.max(latest, best);
  }, 0);
}

function firstEnd(compiled: Compiled, node: number, clock: Parameters<typeof startAt>[0], need: number, from: number): number {
  const straining = compiled.straining[node]!;
  const pin = compiled.tasks[node]!.pin;
  for (let t = startAt(clock, NOTHING, pin === null ? from : Math.max(from, pin.start)); t < NEVER; ) {
    const end = compiled.tasks[node]!.pauses ? endOf(clock, NOTHING, t, need, straining) : unbrokenEnd(clock, NOTHING, t, need, straining);
    if (end >= 0) return end;
    t = -end;
  }
  return NEVER;
}

function fittingEnd(compiled: Compiled, node: number, from: number): number {
  const fitting = compiled.fittings[node]!;
  const free = compiled.performerFree[fitting.performer]!;
  const step = Math.max(1, fitting.step);
  for (let t = Math.ceil(from / step) * step; ; t += step) {
    const next = nextWorking(free, t);
    if (next >= NEVER) return NEVER;
    t = Math.ceil(next / step) * step;
    const end = t + fitting.minutes;
    if (stretchAt(free, t) === free.ends.length) return NEVER;
    const someone = (): boolean => compiled.quickest[fitting.fitterSkill]!.some(({ clock }) => within(clock, t, end));
    if (within(free, t, end) && compiled.roomFree.some((room) => within(room, t, end)) && someone()) return end;
  }
}
