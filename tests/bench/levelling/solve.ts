import { checkPlan } from "#lib/levelling/checker/checkPlan";
import { level } from "#lib/levelling/level";
import type { Instance } from "../../published/scheduling/instance";
import { type Solved, solveOnIslands } from "./solveOnIslands";
import type { BenchResult } from "./summary";
import type { Threads } from "./threads";

/** Rounds enough that only the budget or the clock ends the search. */
const WITHOUT_END = 1_000_000;

export interface Budget {
  readonly schedules: number | undefined;
  readonly seconds: number | undefined;
  readonly seed: number;
  /** Null: no islands, one search. */
  readonly threads: Threads | null;
}

/** Level one instance within a budget of schedules, of seconds, or (neither given) of a thousand schedules. */
export async function solve(instance: Instance, budget: Budget): Promise<BenchResult> {
  const { problem } = instance;
  const { seed, threads } = budget;
  const began = performance.now();
  const cpuBegan = process.cpuUsage();
  const until = budget.seconds === undefined ? Number.POSITIVE_INFINITY : began + 1000 * budget.seconds;
  const stop = (): boolean => performance.now() >= until;
  const schedules = budget.schedules ?? (budget.seconds === undefined ? 1000 : Number.POSITIVE_INFINITY);
  const onIslands = threads === null ? null : await solveOnIslands(problem, threads, { seed, schedules, stop });
  const { plan, objective, bound, ...solved } = onIslands ?? levelled(instance, { seed, schedules, stop });
  const seconds = (performance.now() - began) / 1000;
  const cpu = process.cpuUsage(cpuBegan);
  const starts = plan.placed.map((placement) => placement?.start ?? -1);
  const workers = plan.placed.map((placement) => (placement?.makers ?? []).map(({ maker, skill }) => [maker, skill]));
  return {
    instance,
    objective,
    bound,
    schedules: solved.schedules,
    seconds,
    cpuSeconds: (cpu.user + cpu.system) / 1e6,
    illegal: checkPlan(problem, plan).length > 0 || plan.unplaced.length > 0,
    line: { id: instance.id, objective, starts, ...(instance.kind === "multi-skill" ? { workers } : {}) },
  };
}

function levelled(
  { problem }: Instance,
  { seed, schedules, stop }: { readonly seed: number; readonly schedules: number; readonly stop: () => boolean },
): Solved {
  const budget = Number.isFinite(schedules) ? { schedules } : {};
  const answer = level(problem, { seed, rounds: WITHOUT_END, stop, ...budget });
  return {
    plan: answer.plan,
    objective: answer.measures.weightedLateness,
    bound: answer.bounds.weightedLateness,
    schedules: answer.schedules,
  };
}
