import { checkPlan } from "#lib/levelling/checker/checkPlan";
import { level } from "#lib/levelling/level";
import type { LevellingProblem } from "#lib/levelling/problem";

export interface EngineReport {
  readonly nodes: number;
  /** Work for makers; fittings come on top. */
  readonly tasks: number;
  readonly fittings: number;
  /** By the plain rule, in a process that has not run the engine before: bounds and reasons included. */
  readonly firstPlanMilliseconds: number;
  readonly firstPlanAgainMilliseconds: number;
  readonly firstWeightedLateness: number;
  readonly firstLateDues: number;
  readonly seconds: number;
  readonly rounds: number;
  readonly schedules: number;
  readonly weightedLateness: number;
  readonly latenessBound: number;
  readonly lateDues: number;
  readonly overtimeMinutes: number;
  readonly visits: number;
  readonly unplaced: number;
  /** Until a round ended with nothing late and no overtime; null when none did. */
  readonly secondsToNoneLate: number | null;
  /** Most memory of the engine's process until then, the problem included. */
  readonly memoryMegabytes: number;
  /** Rules the plan breaks, by the checker; null when it was not asked. */
  readonly faults: number | null;
}

/** First plan twice, then the best within so many seconds. */
export const measure = (problem: LevellingProblem, seconds: number, check: boolean): EngineReport => {
  const first = timed(() => level(problem, { seed: 1, rounds: 0, stop: () => false }));
  const again = timed(() => level(problem, { seed: 1, rounds: 0, stop: () => false }));
  const began = performance.now();
  let none: number | null = null;
  const best = timed(() =>
    level(problem, {
      seed: 1,
      rounds: 1_000_000,
      stop: () => performance.now() >= began + 1000 * seconds,
      onRound: (_, { weightedLateness, overtimeMinutes }) => {
        if (weightedLateness === 0 && overtimeMinutes === 0) none ??= rounded((performance.now() - began) / 1000);
      },
    }),
  );
  const { measures, bounds, plan, rounds, schedules } = best.value;
  const memoryMegabytes = Math.round(process.resourceUsage().maxRSS / 1024);
  return {
    nodes: problem.nodes.length,
    tasks: problem.nodes.filter((node) => node.kind === "task" && node.crew.length > 0).length,
    fittings: problem.nodes.filter((node) => node.kind === "fitting").length,
    firstPlanMilliseconds: first.milliseconds,
    firstPlanAgainMilliseconds: again.milliseconds,
    firstWeightedLateness: first.value.measures.weightedLateness,
    firstLateDues: first.value.measures.lateDues,
    seconds: rounded(best.milliseconds / 1000),
    rounds,
    schedules,
    weightedLateness: measures.weightedLateness,
    latenessBound: bounds.weightedLateness,
    lateDues: measures.lateDues,
    overtimeMinutes: measures.overtimeMinutes,
    visits: measures.visits,
    unplaced: plan.unplaced.length,
    secondsToNoneLate: none,
    memoryMegabytes,
    faults: check ? checkPlan(problem, plan).length : null,
  };
};

const timed = <T>(work: () => T): { readonly value: T; readonly milliseconds: number } => {
  const began = performance.now();
  const value = work();
  return { value, milliseconds: Math.round(10 * (performance.now() - began)) / 10 };
};

const rounded = (value: number): number => Math.round(1000 * value) / 1000;
