import type { Busy } from "./busy";
import { UNITS, type Working } from "./clockStore";
import type { Compiled } from "./compiled";
import { needAt } from "./fit";
import { work } from "./labour";
import { joined } from "./placeCrew";
import type { Interval, Placement, Plan } from "./problem";
import type { Schedule } from "./schedule";

/** The schedule as plain objects, visits in order of time. */
export function planOf(schedule: Schedule): Plan {
  const { compiled } = schedule;
  const placed = Array.from({ length: compiled.count }, (_, node): Placement | null => {
    if (!schedule.isPlaced(node)) return null;
    const start = schedule.start[node]!;
    const end = schedule.end[node]!;
    const makers = schedule.crew[node]!;
    const overtime = schedule.overtime[node] === 1;
    return { start, end, makers, stretches: workedIn(compiled, schedule.appointments, node, start, end, makers, overtime), overtime };
  });
  const visits = schedule.visits
    .flatMap((visit) => (visit === null ? [] : [{ ...visit, fittings: [...visit.fittings] }]))
    .sort((a, b) => a.start - b.start || a.performer - b.performer);
  const unplaced = schedule.unplaced.flatMap((why, node) => (why === null ? [] : [{ node, ...why }]));
  return { placed, visits, unplaced };
}

/** When a node that starts at `start` is really worked on, given the visits of its makers. */
export function workedIn(
  compiled: Compiled,
  appointments: readonly Busy[],
  node: number,
  start: number,
  end: number,
  makers: readonly Working[],
  overtime: boolean,
): Interval[] {
  const task = compiled.tasks[node];
  if (start === end) return [];
  if (!task || makers.length === 0) return noCrew(compiled, node, start, end);
  const stretches: Interval[] = [];
  const machines = compiled.openMachines[node]!;
  const [person, ...others] = makers;
  const alone = others.length === 0;
  const clock = alone ? compiled.clocks.ofMakerAt(person!.maker, machines, overtime) : compiled.clocks.ofCrew(makers, machines, overtime);
  const need = alone ? needAt(task.minutes, compiled.problem.makers[person!.maker]!.pace[person!.skill]!) : task.minutes * UNITS;
  const busy = joined(makers.map(({ maker }) => appointments[maker]!));
  work(clock, busy, start, need, compiled.straining[node]!, stretches);
  return stretches;
}

function noCrew(compiled: Compiled, node: number, start: number, end: number): Interval[] {
  const clock = compiled.tasks[node] ? compiled.clocks.ofMachines(compiled.openMachines[node]!) : compiled.clocks.always;
  return Array.from(clock.starts, (from, i) => ({ start: Math.max(start, from), end: Math.min(end, clock.ends[i]!) })).filter(
    (stretch) => stretch.end > stretch.start,
  );
}
