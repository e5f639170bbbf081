import type { Instance } from "../../published/scheduling/instance";

export interface BenchResult {
  readonly instance: Instance;
  readonly objective: number;
  readonly bound: number;
  readonly schedules: number;
  readonly seconds: number;
  /** Of the processor: what the same work takes on a machine that does nothing else. */
  readonly cpuSeconds: number;
  readonly illegal: boolean;
  readonly line: object;
}

export interface BenchSummary {
  readonly instances: number;
  readonly schedules: number;
  readonly seconds: number;
  readonly schedulesPerSecond: number;
  /** Percent over the critical path; null where the set has none. */
  readonly meanDeviationCriticalPath: number | null;
  /** Percent over the best known (over 1 where that is 0). */
  readonly meanDeviationBest: number;
  readonly reachedBest: number;
  /** Equal to the engine's own bound. */
  readonly provedOptimal: number;
  readonly illegal: number;
}

export function summary(results: readonly BenchResult[]): BenchSummary {
  const schedules = results.reduce((sum, result) => sum + result.schedules, 0);
  const seconds = results.reduce((sum, result) => sum + result.seconds, 0);
  const over = (objective: number, base: number): number => (100 * (objective - base)) / Math.max(1, base);
  const withPath = results.filter(({ instance }) => instance.criticalPath !== null);
  return {
    instances: results.length,
    schedules,
    seconds: rounded(seconds),
    schedulesPerSecond: Math.round(schedules / seconds),
    meanDeviationCriticalPath:
      withPath.length === 0 ? null : mean(withPath.map(({ objective, instance }) => over(objective, instance.criticalPath!))),
    meanDeviationBest: mean(results.map(({ objective, instance }) => over(objective, instance.best))),
    reachedBest: results.filter(({ objective, instance }) => objective <= instance.best).length,
    provedOptimal: results.filter(({ objective, bound }) => objective === bound).length,
    illegal: results.filter(({ illegal }) => illegal).length,
  };
}

/** What the same search makes on a machine that does nothing else. */
export const schedulesPerCpuSecond = (results: readonly BenchResult[]): number =>
  Math.round(results.reduce((sum, result) => sum + result.schedules, 0) / results.reduce((sum, result) => sum + result.cpuSeconds, 0));

const mean = (values: readonly number[]): number => rounded(values.reduce((sum, value) => sum + value, 0) / values.length);

const rounded = (value: number): number => Math.round(value * 1000) / 1000;
