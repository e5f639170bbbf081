import { boundsOf } from "#lib/levelling/bounds";
import { canonical } from "#lib/levelling/canonical";
import { measuresOf } from "#lib/levelling/measures";
import type { LevellingProblem, Plan } from "#lib/levelling/problem";
import { planAt } from "#lib/levelling/project/levelProject";
import { searchIslands } from "#lib/levelling/project/projectIslands";
import { projectOf } from "#lib/levelling/project/projectOf";
import type { Threads } from "./threads";

export interface Solved {
  readonly plan: Plan;
  readonly objective: number;
  readonly bound: number;
  readonly schedules: number;
}

/** A project levelled on islands; null for a problem of another kind. `schedules` is the budget of all islands together. */
export async function solveOnIslands(
  problem: LevellingProblem,
  threads: Threads,
  { seed, schedules, stop }: { readonly seed: number; readonly schedules: number; readonly stop: () => boolean },
): Promise<Solved | null> {
  const { problem: sorted, toGiven } = canonical(problem);
  const recognised = projectOf(sorted);
  if (recognised === null) return null;
  const { at, weight } = sorted.dues[0]!;
  const goal = Math.floor(at / recognised.step);
  const found = await searchIslands(threads.islands(sorted, seed, goal, schedules), goal, Number.POSITIVE_INFINITY, stop);
  const plan = toGiven(planAt(sorted, found.best.start, recognised.step));
  return {
    plan,
    objective: measuresOf(problem, plan).weightedLateness,
    bound: Math.max(boundsOf(sorted).weightedLateness, weight * Math.max(0, found.lower * recognised.step - at)),
    schedules: Math.ceil(found.schedules),
  };
}
