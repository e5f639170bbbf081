import { boundsOf } from "./bounds";
import { canonical } from "./canonical";
import { type Compiled, compile } from "./compiled";
import { levelCrewed } from "./crewed/levelCrewed";
import { explain } from "./explain";
import { measuresOf } from "./measures";
import type { LevellingAnswer, LevellingProblem, LevelOptions } from "./problem";
import { levelProject } from "./project/levelProject";
import { levelSequence } from "./project/levelSequence";
import { search } from "./search";
import { raised, type Special } from "./special";

/** Plan the work: always an answer, legal, with its measures, its bounds and the reasons of what is late. */
export function level(problem: LevellingProblem, options: LevelOptions): LevellingAnswer {
  const { problem: sorted, toGiven, chainsToGiven } = canonical(problem);
  const compiled = compile(sorted);
  const special = levelProject(sorted, options) ?? levelSequence(sorted, options) ?? levelCrewed(sorted, options);
  const { plan: found, rounds, schedules, rule } = special ?? general(compiled, options);
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

function general(compiled: Compiled, options: LevelOptions): Omit<Special, "proved"> {
  return search(compiled, options);
}
