import { measuresOf } from "./measures";
import type { LevellingProblem, LevelOptions, Plan } from "./problem";
import type { Special } from "./special";

/** A search for the earliest end of a project, one round at a time, in steps of its own. */
export interface EndSearch {
  round(): void;
  readonly done: boolean;
  readonly schedules: number;
  /** No plan ends before it. */
  readonly lower: number;
}

/** Searches until the rounds are over, an end is proved, or it is told to stop. The problem has one due date, that of its end. */
export function searchRounds(
  problem: LevellingProblem,
  options: LevelOptions,
  search: EndSearch,
  of: { readonly step: number; readonly plan: () => Plan; readonly rule: string; readonly reason: string },
): Special {
  const { at, weight } = problem.dues[0]!;
  options.onRound?.(0, measuresOf(problem, of.plan()));
  let rounds = 0;
  while (rounds < options.rounds && !search.done && !options.stop()) {
    rounds++;
    search.round();
    options.onRound?.(rounds, measuresOf(problem, of.plan()));
  }
  const finish = search.lower * of.step;
  return {
    plan: of.plan(),
    rounds,
    schedules: Math.ceil(search.schedules),
    rule: rounds === 0 ? "latest start" : of.rule,
    proved: { weightedLateness: weight * Math.max(0, finish - at), finish, reason: of.reason },
  };
}
