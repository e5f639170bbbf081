import { boundsOf } from "./bounds";
import { canonical } from "./canonical";
import { compile } from "./compiled";
import { levelCrewed } from "./crewed/levelCrewed";
import { explain } from "./explain";
import { Island } from "./island";
import { measuresOf } from "./measures";
import type { LevellingAnswer, LevellingProblem, LevelOptions, Plan } from "./problem";
import { levelProject } from "./project/levelProject";
import { levelSequence } from "./project/levelSequence";
import { type Beside, search } from "./search";
import { raised } from "./special";

/** Starts an island of the search somewhere else, with the first plan in the indices of `islandOf`. */
export type Elsewhere = (island: number, first: Plan) => Beside;

/** Plan the work: always an answer, legal, with its measures, its bounds and the reasons of what is late. */
export function level(problem: LevellingProblem, options: LevelOptions, elsewhere?: Elsewhere): LevellingAnswer {
  const { problem: sorted, toGiven, chainsToGiven } = canonical(problem);
  const compiled = compile(sorted);
  const special = levelProject(sorted, options) ?? levelSequence(sorted, options) ?? levelCrewed(sorted, options);
  const { plan: found, rounds, schedules, rule } = special ?? search(compiled, options, elsewhere);
  const plan = toGiven(found);
  const bounds = boundsOf(sorted, compiled);
  return {
    plan,
    measures: measuresOf(problem, plan),
    bounds: special === null ? bounds : raised(bounds, special),
    late: chainsToGiven(explain(sorted, found, compiled)),
    seed: options.seed,
    rounds,
    schedules,
    rule,
  };
}

/** An island of the search for a problem, to be run in a thread of its own beside `level` with the same options. */
export const islandOf = (problem: LevellingProblem, options: LevelOptions, island: number, first: Plan): Beside =>
  new Island(compile(canonical(problem).problem), options, island, first);
