import { measuresOf } from "../measures";
import type { LevellingProblem, LevelOptions, Plan } from "../problem";
import type { Special } from "../special";
import { projectOf } from "./projectOf";
import { ProjectSearch } from "./projectSearch";

/** Plan a problem that is a resource-constrained project; null when it is more than that. */
export function levelProject(problem: LevellingProblem, options: LevelOptions): Special | null {
  const recognised = projectOf(problem);
  if (recognised === null) return null;
  const { project, step } = recognised;
  const { at, weight } = problem.dues[0]!;
  const search = new ProjectSearch(project, options.seed, Math.floor(at / step), options.schedules ?? Number.POSITIVE_INFINITY);
  const plan = (): Plan => planAt(problem, search.best.start, step);
  options.onRound?.(0, measuresOf(problem, plan()));
  let rounds = 0;
  while (rounds < options.rounds && !search.done && !options.stop()) {
    rounds++;
    search.round();
    options.onRound?.(rounds, measuresOf(problem, plan()));
  }
  const finish = search.lower * step;
  return {
    plan: plan(),
    rounds,
    schedules: Math.ceil(search.schedules),
    rule: rounds === 0 ? "latest start" : "two populations",
    proved: {
      weightedLateness: weight * Math.max(0, finish - at),
      finish,
      reason:
        "The end is no earlier by the amounts of work between the earliest starts and the latest ends, or every earlier end was tried.",
    },
  };
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
