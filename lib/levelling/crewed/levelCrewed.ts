import type { LevellingProblem, LevelOptions, Plan } from "../problem";
import { searchRounds } from "../searchRounds";
import type { Special } from "../special";
import { crewedProjectOf } from "./crewedProject";
import { CrewedSearch } from "./crewedSearch";

/** Plan a problem that is a multi-skill project; null when it is more than that. */
export function levelCrewed(problem: LevellingProblem, options: LevelOptions): Special | null {
  const recognised = crewedProjectOf(problem);
  if (recognised === null) return null;
  const { project, step } = recognised;
  const latest = Math.floor(problem.dues[0]!.at / step);
  const search = new CrewedSearch(project, options.seed, latest, options.schedules ?? Number.POSITIVE_INFINITY);
  return searchRounds(problem, options, search, {
    step,
    plan: () => planOf(problem, search, step),
    rule: "orders justified both ways",
    reason: "The end is no earlier by the longest chain and the hours of each set of skills, or every earlier end was tried.",
  });
}

function planOf({ nodes }: LevellingProblem, search: CrewedSearch, step: number): Plan {
  const placed = nodes.map((node, task) => {
    const start = search.best.start[task]! * step;
    const end = start + node.minutes;
    const skills = node.kind === "task" ? node.crew.flatMap(({ skill, count }) => new Array<number>(count).fill(skill)) : [];
    const makers = node.minutes === 0 ? [] : search.seated(task).map((maker, seat) => ({ maker, skill: skills[seat]! }));
    return { start, end, makers, stretches: node.minutes > 0 ? [{ start, end }] : [], overtime: false };
  });
  return { placed, visits: [], unplaced: [] };
}
