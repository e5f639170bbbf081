import { NEVER, stretchAt } from "./clock";
import type { Working } from "./clockStore";
import { machinesFrom } from "./fit";
import { interruption } from "./interrupt";
import { startAt } from "./labour";
import { joined, togetherAt } from "./placeCrew";
import { joining, within } from "./placeFitting";
import type { Schedule } from "./schedule";
import { mayVisit } from "./visitLimit";

/** Place a task at this minute with these makers, or not at all; "held": the start may lie outside working time. */
export function placeTaskExactly(
  schedule: Schedule,
  node: number,
  start: number,
  crew: readonly Working[],
  overtime: boolean,
  held: boolean,
): boolean {
  const { compiled } = schedule;
  const task = compiled.tasks[node]!;
  const machines = compiled.openMachines[node]!;
  if (!seatsFilled(schedule, node, crew)) return false;
  if (crew.length === 0) {
    const clock = compiled.clocks.ofMachines(machines);
    const i = stretchAt(clock, start);
    const end = start + task.minutes;
    if (i === clock.ends.length || clock.starts[i]! > start || clock.runEnds[i]! < end || machinesFrom(schedule, node, start, end) >= 0)
      return false;
    schedule.put(node, { start, end, crew, overtime: false });
    return true;
  }
  const clock = compiled.clocks.ofCrew(crew, machines, overtime);
  const begin = startAt(clock, joined(crew.map(({ maker }) => schedule.appointments[maker]!)), start);
  if (begin >= NEVER || (begin !== start && !held)) return false;
  const { end } = togetherAt(schedule, node, crew, machines, begin, overtime);
  if (end < 0 || crew.some(({ maker }) => !schedule.work[maker]!.isFree(start, end)) || machinesFrom(schedule, node, start, end) >= 0)
    return false;
  schedule.put(node, { start, end, crew, overtime });
  return true;
}

/** As many makers of each skill as the task asks for, each once and with the skill. */
function seatsFilled(schedule: Schedule, node: number, crew: readonly Working[]): boolean {
  const { seats, problem } = schedule.compiled;
  const asked = seats[node]!;
  return (
    crew.length === asked.length &&
    new Set(crew.map(({ maker }) => maker)).size === crew.length &&
    crew.every(({ maker, skill }, i) => skill === asked[i]!.skill && (problem.makers[maker]?.pace[skill] ?? 0) > 0)
  );
}

/** Place a fitting at this minute with this fitter in this room, joining the visit it touches when that is the same appointment. */
export function placeFittingExactly(
  schedule: Schedule,
  node: number,
  start: number,
  fitter: number,
  room: number,
  overtime: boolean,
): boolean {
  const { compiled } = schedule;
  const fitting = compiled.fittings[node]!;
  const end = start + fitting.minutes;
  const { performer, fitterSkill } = fitting;
  const busy = schedule.performers[performer]!;
  const can =
    start % Math.max(1, fitting.step) === 0 &&
    (compiled.problem.makers[fitter]?.pace[fitterSkill] ?? 0) > 0 &&
    room < compiled.roomFree.length &&
    within(compiled.performerFree[performer]!, start, end) &&
    within(compiled.roomFree[room]!, start, end) &&
    within(compiled.clocks.ofMaker(fitter, overtime), start, end) &&
    busy.isFree(start, end) &&
    schedule.appointments[fitter]!.isFree(start, end) &&
    schedule.rooms[room]!.conflict(start, end, 1) < 0;
  if (!can) return false;
  for (const number of busy.ids) {
    const visit = schedule.visits[number]!;
    const gap = start >= visit.end ? start - visit.end : visit.start - end;
    if (visit.fitter !== fitter || visit.room !== room || gap < 0 || gap >= Math.max(1, fitting.step)) continue;
    const slot = joining(schedule, node, number, start, end, overtime);
    if (slot === null) continue;
    schedule.joinVisit(node, number, start, end, fitterSkill, overtime);
    if (slot.interrupts !== null) schedule.prolong(slot.interrupts.node, slot.interrupts.end);
    return true;
  }
  const interrupts = interruption(schedule, fitter, start, end);
  if (interrupts === "blocked" || (fitting.pin === null && !mayVisit(schedule, performer, start))) return false;
  schedule.openVisit(node, { performer, fitter, room, start, end }, fitterSkill, overtime);
  if (interrupts !== null) schedule.prolong(interrupts.node, interrupts.end);
  return true;
}
