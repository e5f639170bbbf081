import { boundsOf } from "./bounds";
import { canonical } from "./canonical";
import { compile } from "./compiled";
import { explain } from "./explain";
import { measuresOf } from "./measures";
import type { LevellingAnswer, LevellingProblem, LevelOptions } from "./problem";
import { search } from "./search";

/** Plan the work: always an answer, legal, with its measures, its bounds and the reasons of what is late. */
export function level(problem: LevellingProblem, options: LevelOptions): LevellingAnswer {
  const { problem: sorted, toGiven } = canonical(problem);
  const compiled = compile(sorted);
  const { best, rounds, schedules } = search(compiled, options);
  const plan = toGiven(best.score.plan);
  return {
    plan,
    measures: measuresOf(problem, plan),
    bounds: boundsOf(sorted, compiled),
    late: explain(problem, plan),
    seed: options.seed,
    rounds,
    schedules,
    rule: best.rule,
  };
}
