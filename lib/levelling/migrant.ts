import type { Candidate } from "./candidate";
import type { Compiled } from "./compiled";
import { plainChoices } from "./placeNode";
import { byStart } from "./planMaker";
import type { Plan } from "./problem";
import { Schedule } from "./schedule";
import { Score } from "./score";

/** A plan of this very problem made a schedule again, everything exactly where it is. */
function scheduleOf(compiled: Compiled, plan: Plan): Schedule {
  const schedule = new Schedule(compiled);
  for (const { performer, fitter, room, fittings } of plan.visits) {
    const [first, ...others] = fittings;
    const { fitterSkill } = compiled.fittings[first!]!;
    const { start, end, overtime } = plan.placed[first!]!;
    schedule.openVisit(first!, { performer, fitter, room, start, end }, fitterSkill, overtime);
    for (const node of others) {
      const place = plan.placed[node]!;
      const skill = compiled.fittings[node]!.fitterSkill;
      schedule.joinVisit(node, schedule.visitOf[first!]!, place.start, place.end, skill, place.overtime);
    }
  }
  plan.placed.forEach((place, node) => {
    if (place === null || compiled.tasks[node] === null) return;
    schedule.put(node, { start: place.start, end: place.end, crew: place.makers, overtime: place.overtime });
  });
  for (const { node, reason, detail } of plan.unplaced) schedule.unplaced[node] = { reason, detail };
  return schedule;
}

/** A plan from elsewhere as the search holds its own. */
export function restoredCandidate(compiled: Compiled, plan: Plan, rule: string): Candidate {
  const schedule = scheduleOf(compiled, plan);
  const choices = { ...plainChoices(compiled.count), overtime: schedule.overtime.slice() };
  return { order: byStart(schedule.start), choices, score: new Score(schedule), rule };
}
