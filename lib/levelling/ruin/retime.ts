import { UNITS } from "../clockStore";
import { needAt } from "../fit";
import { endOf } from "../labour";
import { joined } from "../placeCrew";
import type { Schedule } from "../schedule";

/** When work that stands where it is ends, given the appointments its makers have now. */
export function endNow(schedule: Schedule, node: number): number {
  const { compiled } = schedule;
  const task = compiled.tasks[node]!;
  const crew = schedule.crew[node]!;
  const [person, ...others] = crew;
  if (person === undefined) return schedule.end[node]!;
  const machines = compiled.openMachines[node]!;
  const overtime = schedule.overtime[node] === 1;
  const alone = others.length === 0;
  const clock = alone ? compiled.clocks.ofMakerAt(person.maker, machines, overtime) : compiled.clocks.ofCrew(crew, machines, overtime);
  const need = alone ? needAt(task.minutes, compiled.problem.makers[person.maker]!.pace[person.skill]!) : task.minutes * UNITS;
  const appointments = joined(crew.map(({ maker }) => schedule.appointments[maker]!));
  return endOf(clock, appointments, schedule.start[node]!, need, compiled.straining[node]!);
}
