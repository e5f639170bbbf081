import { type Clock, NEVER, nextWorking, stretchAt } from "./clock";
import { interruption } from "./interrupt";
import type { Schedule } from "./schedule";
import { mayVisit, nextWeek } from "./visitLimit";

/** Where a fitting may go: in a visit of its own, or at an end of one that is there already. */
export interface FittingSlot {
  readonly start: number;
  readonly end: number;
  readonly fitter: number;
  readonly room: number;
  /** Visit to join, or -1. */
  readonly visit: number;
  /** Task that the fitter interrupts and its new end, or null. */
  readonly interrupts: { readonly node: number; readonly end: number } | null;
}

/** Earliest place for a fitting from `from` on; a visit already planned is joined when that ends no later (or within `patience`). */
export function fittingSlot(schedule: Schedule, node: number, from: number, overtime: boolean, patience: number): FittingSlot | null {
  const alone = ownVisit(schedule, node, from, overtime);
  const latest = alone === null ? NEVER : alone.end + patience;
  return joinedVisit(schedule, node, from, overtime, latest) ?? alone;
}

function ownVisit(schedule: Schedule, node: number, from: number, overtime: boolean): FittingSlot | null {
  const { compiled } = schedule;
  const fitting = compiled.fittings[node]!;
  const free = compiled.performerFree[fitting.performer]!;
  const step = Math.max(1, fitting.step);
  for (let t = stepUp(nextWorking(free, from), step); t < NEVER; ) {
    const end = t + fitting.minutes;
    const i = stretchAt(free, t);
    if (i === free.ends.length) return null;
    if (free.starts[i]! > t || free.runEnds[i]! < end) {
      t = stepUp(free.starts[i]! > t ? free.starts[i]! : nextWorking(free, free.runEnds[i]!), step);
      continue;
    }
    if (!mayVisit(schedule, fitting.performer, t)) {
      t = stepUp(nextWorking(free, nextWeek(schedule, t)), step);
      continue;
    }
    if (schedule.performers[fitting.performer]!.isFree(t, end)) {
      const room = freeRoom(schedule, t, end);
      const found = room < 0 ? null : freeFitter(schedule, node, t, end, overtime);
      if (found !== null) return { start: t, end, room, visit: -1, ...found };
    }
    t += step;
  }
  return null;
}

/** The visit of the same performer that the fitting may join with the earliest end, not after `latest`. */
function joinedVisit(schedule: Schedule, node: number, from: number, overtime: boolean, latest: number): FittingSlot | null {
  const fitting = schedule.compiled.fittings[node]!;
  const step = Math.max(1, fitting.step);
  let best: FittingSlot | null = null;
  const busy = schedule.performers[fitting.performer]!;
  for (const number of busy.ids) {
    const visit = schedule.visits[number]!;
    const after = stepUp(visit.end, step);
    const before = Math.floor((visit.start - fitting.minutes) / step) * step;
    for (const start of [before, after]) {
      const end = start + fitting.minutes;
      const gap = start === after ? after - visit.end : visit.start - end;
      if (start < from || end > latest || gap >= step || (best !== null && best.end <= end)) continue;
      const found = joining(schedule, node, number, start, end, overtime);
      if (found !== null) best = found;
    }
  }
  return best;
}

/** How a fitting would join a visit at this minute; null when it cannot. */
export function joining(
  schedule: Schedule,
  node: number,
  number: number,
  start: number,
  end: number,
  overtime: boolean,
): FittingSlot | null {
  const { compiled } = schedule;
  const fitting = compiled.fittings[node]!;
  const { room, fitter, ...visit } = schedule.visits[number]!;
  const from = start < visit.start ? start : visit.end;
  const to = start < visit.start ? visit.start : end;
  if ((compiled.problem.makers[fitter]!.pace[fitting.fitterSkill] ?? 0) <= 0) return null;
  const whole = { start: Math.min(start, visit.start), end: Math.max(end, visit.end) };
  if (!within(compiled.performerFree[fitting.performer]!, whole.start, whole.end)) return null;
  if (!schedule.performers[fitting.performer]!.isFree(from, to)) return null;
  if (!within(compiled.roomFree[room]!, whole.start, whole.end) || schedule.rooms[room]!.conflict(from, to, 1) >= 0) return null;
  if (!schedule.appointments[fitter]!.isFree(from, to)) return null;
  if (!within(compiled.clocks.ofMaker(fitter, overtime), start, end)) return null;
  if (start < visit.start && !mayVisit(schedule, fitting.performer, start, number)) return null;
  const interrupts = interruption(schedule, fitter, from, to);
  return interrupts === "blocked" ? null : { start, end, fitter, room, visit: number, interrupts };
}

export function freeRoom(schedule: Schedule, start: number, end: number): number {
  return schedule.rooms.findIndex((room, i) => within(schedule.compiled.roomFree[i]!, start, end) && room.conflict(start, end, 1) < 0);
}

/** A fitter who is there: better one who is doing nothing than one who must put work down. */
function freeFitter(
  schedule: Schedule,
  node: number,
  start: number,
  end: number,
  overtime: boolean,
): Pick<FittingSlot, "fitter" | "interrupts"> | null {
  const { compiled } = schedule;
  const fitters = compiled.skilled[compiled.fittings[node]!.fitterSkill]!;
  const isThere = (fitter: number): boolean =>
    within(compiled.clocks.ofMaker(fitter, overtime), start, end) && schedule.appointments[fitter]!.isFree(start, end);
  for (const fitter of fitters) if (schedule.work[fitter]!.isFree(start, end) && isThere(fitter)) return { fitter, interrupts: null };
  for (const fitter of fitters) {
    if (!isThere(fitter)) continue;
    const interrupts = interruption(schedule, fitter, start, end);
    if (interrupts !== "blocked") return { fitter, interrupts };
  }
  return null;
}

/** Does one unbroken run hold all of [start, end)? */
export function within(clock: Clock, start: number, end: number): boolean {
  const i = stretchAt(clock, start);
  return i < clock.ends.length && clock.starts[i]! <= start && clock.runEnds[i]! >= end;
}

const stepUp = (at: number, step: number): number => (at >= NEVER ? NEVER : Math.ceil(at / step) * step);
