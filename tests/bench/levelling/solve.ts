import { checkPlan } from "#lib/levelling/checker/checkPlan";
import { level } from "#lib/levelling/level";
import type { Instance } from "../../published/scheduling/instance";
import type { BenchResult } from "./summary";

/** Rounds enough that only the budget or the clock ends the search. */
const WITHOUT_END = 1_000_000;

/** Level one instance within a budget of schedules, of seconds, or (neither given) of a thousand schedules. */
export function solve(
  instance: Instance,
  budget: { readonly schedules: number | undefined; readonly seconds: number | undefined; readonly seed: number },
): BenchResult {
  const { problem } = instance;
  const began = performance.now();
  const cpuBegan = process.cpuUsage();
  const until = budget.seconds === undefined ? Number.POSITIVE_INFINITY : began + 1000 * budget.seconds;
  const schedules = budget.schedules ?? (budget.seconds === undefined ? 1000 : undefined);
  const answer = level(problem, {
    seed: budget.seed,
    rounds: WITHOUT_END,
    stop: () => performance.now() >= until,
    ...(schedules === undefined ? {} : { schedules }),
  });
  const seconds = (performance.now() - began) / 1000;
  const cpu = process.cpuUsage(cpuBegan);
  const objective = answer.measures.weightedLateness;
  const starts = answer.plan.placed.map((placement) => placement?.start ?? -1);
  const workers = answer.plan.placed.map((placement) => (placement?.makers ?? []).map(({ maker, skill }) => [maker, skill]));
  return {
    instance,
    objective,
    bound: answer.bounds.weightedLateness,
    schedules: answer.schedules,
    seconds,
    cpuSeconds: (cpu.user + cpu.system) / 1e6,
    illegal: checkPlan(problem, answer.plan).length > 0 || answer.plan.unplaced.length > 0,
    line: { id: instance.id, objective, starts, ...(instance.kind === "multi-skill" ? { workers } : {}) },
  };
}
