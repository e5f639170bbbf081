import type { LevellingProblem, LevelOptions, Plan } from "../problem";
import { searchRounds } from "../searchRounds";
import type { Special } from "../special";
import { projectOf } from "./projectOf";
import { ProjectSearch } from "./projectSearch";

/** Plan a problem that is a resource-constrained project; null when it is more than that. */
export function levelProject(problem: LevellingProblem, options: LevelOptions): Special | null {
  const recognised = projectOf(problem);
  if (recognised === null) return null;
  const { project, step } = recognised;
  const latest = Math.floor(problem.dues[0]!.at / step);
  const search = new ProjectSearch(project, options.seed, latest, options.schedules ?? Number.POSITIVE_INFINITY);
  return searchRounds(problem, options, search, {
    step,
    plan: () => planAt(problem, search.best.start, step),
    rule: "two populations",
    reason: "The end is no earlier by the amounts of work between the earliest starts and the latest ends, or every earlier end was tried.",
  });
}

/** The plan with these starts, counted in steps. */
export function planAt({ nodes }: LevellingProblem, start: Int32Array, step: number): Plan {
  const placed = nodes.map(({ minutes }, node) => {
    const from = start[node]! * step;
    const to = from + minutes;
    return { start: from, end: to, makers: [], stretches: minutes > 0 ? [{ start: from, end: to }] : [], overtime: false };
  });
  return { placed, visits: [], unplaced: [] };
}
