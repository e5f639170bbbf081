import type { Compiled } from "./compiled";
import type { Unplaced } from "./problem";

/** Why a node that waits for nothing has no place. */
export function whyNot(compiled: Compiled, node: number): Omit<Unplaced, "node"> {
  const { problem } = compiled;
  const fitting = compiled.fittings[node];
  if (fitting) {
    if (compiled.skilled[fitting.fitterSkill]!.length === 0) {
      return { reason: "no one has the skill", detail: problem.skills[fitting.fitterSkill]! };
    }
    if (compiled.performerFree[fitting.performer]!.total === 0) {
      return { reason: "performer never free", detail: problem.performers[fitting.performer]!.id };
    }
    if (!problem.rooms.some((room) => room.count > 0 && room.free.length > 0))
      return { reason: "no room", detail: "No room is ever open." };
    return { reason: "no time left in the calendars", detail: "Performer, fitter and room are never free together." };
  }
  const task = compiled.tasks[node]!;
  for (const { skill, count } of task.crew) {
    const have = compiled.skilled[skill]!.length;
    if (have < count) {
      return {
        reason: "no one has the skill",
        detail: have === 0 ? problem.skills[skill]! : `${problem.skills[skill]}: ${count} asked, ${have} there`,
      };
    }
  }
  for (const { machine, count } of task.machines) {
    const there = problem.machines[machine]!;
    if (there.count < count || there.calendar?.length === 0) return { reason: "machine missing", detail: there.id };
  }
  return { reason: "no time left in the calendars", detail: `${task.minutes} minutes are asked.` };
}
