import { checkPlan } from "#lib/levelling/checker/checkPlan";
import type { LevellingAnswer, LevellingProblem, Plan } from "#lib/levelling/problem";
import type { Staging } from "#lib/staging/staging";
import { assemble } from "./assemble";
import { type PrepareOptions, prepare } from "./prepare";
import type { Prepared } from "./prepared";
import type { StagingPlan } from "./stagingPlan";

export interface PlanOptions extends PrepareOptions {
  /** How the problem is levelled: here and now, or in a thread. */
  readonly level: (problem: LevellingProblem) => LevellingAnswer | Promise<LevellingAnswer>;
  /** What is taken by other productions, or fixed by hand, put into the problem before it is levelled. */
  readonly ready?: (prepared: Prepared) => Prepared;
  /** Plan to begin from and stay close to, in terms of the problem; none when absent. */
  readonly current?: (prepared: Prepared) => Plan;
}

/**
 * The whole way: a staging broken down, levelled, judged and put back into words.
 * @throws Error when the independent checker finds the plan wrong: a defect, never a fault of the data.
 */
export const planStaging = async (staging: Staging, { level, ready, current, ...options }: PlanOptions): Promise<StagingPlan> => {
  const all = prepare(staging, options);
  const fresh = ready ? ready(all) : all;
  const prepared = current ? { ...fresh, problem: { ...fresh.problem, current: current(fresh) } } : fresh;
  const answer = await level(prepared.problem);
  const wrong = checkPlan(prepared.problem, answer.plan);
  if (wrong.length > 0) throw new Error(`The plan breaks ${wrong.length} of its own rules; first: ${JSON.stringify(wrong[0])}`);
  return assemble(prepared, answer);
};
