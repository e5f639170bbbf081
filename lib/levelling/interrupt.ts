import type { Busy } from "./busy";
import { NEVER } from "./clock";
import { machinesFrom, needAt } from "./fit";
import { endOf } from "./labour";
import { earliestAfter } from "./lags";
import type { Schedule } from "./schedule";

/**
 * What an appointment of `maker` over [start, end) does to the work already planned: null when it meets none, the pausing
 * task it makes longer with that task's new end, or "blocked" when nothing may be put down for it.
 */
export function interruption(
  schedule: Schedule,
  maker: number,
  start: number,
  end: number,
): null | "blocked" | { node: number; end: number } {
  const { compiled } = schedule;
  const busy = schedule.work[maker]!;
  const i = busy.firstEndingAfter(start);
  if (i === busy.starts.length || busy.starts[i]! >= end) return null;
  const node = busy.ids[i]!;
  const task = compiled.tasks[node]!;
  const [person, ...others] = schedule.crew[node]!;
  if (!task.pauses || person === undefined || others.length > 0 || busy.starts[i]! >= start) return "blocked";
  const clock = compiled.clocks.ofMakerAt(maker, compiled.openMachines[node]!, schedule.overtime[node] === 1);
  const need = needAt(task.minutes, compiled.problem.makers[maker]!.pace[person.skill]!);
  const appointments = schedule.appointments[maker]!;
  appointments.add(start, end, -1);
  const prolonged = endOf(clock, appointments, busy.starts[i]!, need, compiled.straining[node]!);
  appointments.remove(start);
  if (Math.max(prolonged, end) + restBefore(schedule, busy, i, prolonged) > (busy.starts[i + 1] ?? NEVER)) return "blocked";
  if (machinesFrom(schedule, node, busy.ends[i]!, prolonged) >= 0 || !followersWait(schedule, node, prolonged)) return "blocked";
  return { node, end: prolonged };
}

/** Rest that straining work must keep from the maker's next straining task: 0 when the next one is not. */
function restBefore(schedule: Schedule, busy: Busy, i: number, end: number): number {
  const { straining, longestRest } = schedule.compiled;
  const own = straining[busy.ids[i]!];
  if (!own) return 0;
  for (let j = i + 1; j < busy.starts.length && busy.starts[j]! < end + longestRest; j++) {
    const other = straining[busy.ids[j]!];
    if (other && busy.starts[j]! < end + Math.max(own.rest, other.rest)) return NEVER;
  }
  return 0;
}

function followersWait(schedule: Schedule, node: number, end: number): boolean {
  const { compiled } = schedule;
  const { links } = compiled;
  for (let i = links.outFirst[node]!; i < links.outFirst[node + 1]!; i++) {
    const link = links.out[i]!;
    const start = schedule.start[links.after[link]!]!;
    if (start >= 0 && start < earliestAfter(compiled, link, end)) return false;
  }
  return true;
}
