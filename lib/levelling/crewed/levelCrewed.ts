import { measuresOf } from "../measures";
import type { LevellingProblem, LevelOptions, Plan } from "../problem";
import type { Special } from "../special";
import { crewedProjectOf } from "./crewedProject";
import { CrewedSearch } from "./crewedSearch";

/** Plan a problem that is a multi-skill project; null when it is more than that. */
export function levelCrewed(problem: LevellingProblem, options: LevelOptions): Special | null {
  const recognised = crewedProjectOf(problem);
  if (recognised === null) return null;
  const { project, step } = recognised;
  const { at, weight } = problem.dues[0]!;
  const search = new CrewedSearch(project, options.seed, Math.floor(at / step), options.schedules ?? Number.POSITIVE_INFINITY);
  const plan = (): Plan => planOf(problem, search, step);
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
    rule: rounds === 0 ? "latest start" : "orders justified both ways",
    proved: {
      weightedLateness: weight * Math.max(0, finish - at),
      finish,
      reason: "The end is no earlier by the longest chain and the hours of each set of skills, or every earlier end was tried.",
    },
  };
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
