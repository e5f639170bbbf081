import { describe, expect, it } from "vitest";
import { checkPlan } from "#lib/levelling/checker/checkPlan";
import { level } from "#lib/levelling/level";
import multiSkill from "./data/multiSkill.json";
import rcpsp from "./data/rcpsp.json";
import tardiness from "./data/tardiness.json";
import { type Instance, instanceOf } from "./instance";

/** Legal, with everything placed, never better than what is proved; the mean gap to the best known in percent. */
function gapAt(instances: readonly unknown[], schedules: number): number {
  const gaps = instances.map((line) => {
    const instance: Instance = instanceOf(line)!;
    const { plan, measures, bounds } = level(instance.problem, { seed: 1, rounds: 1_000_000, schedules, stop: () => false });
    expect(checkPlan(instance.problem, plan), instance.id).toEqual([]);
    expect(plan.unplaced, instance.id).toEqual([]);
    expect(measures.weightedLateness, instance.id).toBeGreaterThanOrEqual(instance.lower);
    expect(bounds.weightedLateness, instance.id).toBeLessThanOrEqual(instance.best);
    return (100 * (measures.weightedLateness - instance.best)) / Math.max(1, instance.best);
  });
  return gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length;
}

describe("published scheduling instances at a fixed budget of schedules", () => {
  it(`projects with limited resources (${rcpsp.source}): mean gap to the best known at 1,000 schedules`, () => {
    const gap = gapAt(rcpsp.instances, 1000);
    console.info(`resource-constrained: mean gap ${gap.toFixed(2)}%`);
    expect(gap).toBeLessThan(3.8);
  });

  it(`projects with limited resources (${rcpsp.source}): mean gap to the best known at 5,000 schedules`, () => {
    const gap = gapAt(rcpsp.instances, 5000);
    console.info(`resource-constrained: mean gap ${gap.toFixed(2)}%`);
    expect(gap).toBeLessThan(2.2);
  });

  it(`projects of thirty tasks (${rcpsp.source}): four of the five are proved optimal within 15,000 schedules`, () => {
    const small = rcpsp.instances.filter(({ jobs }) => jobs.length === 32).map((line) => instanceOf(line)!);
    const proved = small.filter(({ problem, best }) => {
      const { measures, bounds } = level(problem, { seed: 1, rounds: 1_000_000, schedules: 15_000, stop: () => false });
      return bounds.weightedLateness === measures.weightedLateness && measures.weightedLateness === best;
    });
    expect(proved.length).toBeGreaterThanOrEqual(4);
  });

  it(`projects with several skills (${multiSkill.source}): mean gap to the best known at 1,000 schedules`, () => {
    const gap = gapAt(multiSkill.instances, 1000);
    console.info(`multi-skill: mean gap ${gap.toFixed(2)}%`);
    expect(gap).toBeLessThan(4);
  });

  it(`weighted tardiness on one machine (${tardiness.source}): each optimum is reached within 100,000 schedules`, () => {
    const gap = gapAt(tardiness.instances, 100_000);
    expect(gap).toBe(0);
  });
});
