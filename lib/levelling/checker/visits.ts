import type { LevellingProblem, Plan } from "../problem";
import { coveredBy } from "./capacity";

/** Each visit holds its fittings one after the other with gaps of less than a step, while the performer is free and nowhere else. */
export function visitFaults(problem: LevellingProblem, plan: Plan): string[] {
  const faults: string[] = [];
  plan.visits.forEach((visit, number) => {
    const performer = problem.performers[visit.performer]!;
    const name = `The visit of ${performer.id} at ${visit.start}`;
    let last = visit.start;
    for (const node of visit.fittings) {
      const placement = plan.placed[node];
      const fitting = problem.nodes[node]!;
      if (!placement || fitting.kind !== "fitting") {
        faults.push(`${name}: ${fitting.id} is not a planned fitting.`);
        continue;
      }
      const gap = placement.start - last;
      const first = node === visit.fittings[0];
      if (gap < 0 || (first && gap > 0) || gap >= Math.max(1, fitting.step)) faults.push(`${name}: ${fitting.id} does not follow at once.`);
      last = placement.end;
    }
    if (last !== visit.end) faults.push(`${name}: it ends at ${visit.end} and its last fitting at ${last}.`);
    if (!coveredBy(performer.free, visit.start, visit.end)) faults.push(`${name}: the performer is not free.`);
    for (const other of plan.visits.slice(number + 1)) {
      if (other.performer === visit.performer && other.start < visit.end && visit.start < other.end)
        faults.push(`${name}: the performer has another at the same time.`);
    }
  });
  return [...faults, ...weekFaults(problem, plan)];
}

/** No performer has more visits in a week than they may, unless so many hold something pinned. */
function weekFaults({ performers, nodes, week }: LevellingProblem, plan: Plan): string[] {
  return performers.flatMap(({ id, visitsAWeek }, performer) => {
    if (visitsAWeek === undefined) return [];
    const weeks = new Map<number, { all: number; pinned: number }>();
    for (const visit of plan.visits) {
      if (visit.performer !== performer) continue;
      const number = Math.floor((visit.start - week.offset) / week.minutes);
      const counted = weeks.get(number) ?? { all: 0, pinned: 0 };
      const isPinned = visit.fittings.some((node) => nodes[node]?.pin !== null);
      weeks.set(number, { all: counted.all + 1, pinned: counted.pinned + (isPinned ? 1 : 0) });
    }
    return [...weeks]
      .filter(([, { all, pinned }]) => all > Math.max(visitsAWeek, pinned))
      .map(([number, { all }]) => `${id}: ${all} visits in week ${number}, ${visitsAWeek} at most.`);
  });
}
