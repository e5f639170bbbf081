import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkPlan } from "./checker/checkPlan";
import { level } from "./level";
import type { LevellingProblem } from "./problem";
import { randomProblem } from "./testing/randomProblem";

/** The same problems each time. */
const fixed = { seed: 20, endOnFailure: true };
const options = { seed: 7, rounds: 3, stop: () => false };

describe("level", { timeout: 60_000 }, () => {
  it("always gives a legal plan", () => {
    fc.assert(
      fc.property(randomProblem(), fc.nat(1000), (problem, seed) => {
        const { plan } = level(problem, { ...options, seed });
        expect(checkPlan(problem, plan)).toEqual([]);
      }),
      { ...fixed, numRuns: 20 },
    );
  });

  it("never does worse than its bounds", () => {
    fc.assert(
      fc.property(randomProblem(), (problem) => {
        const { measures, bounds, plan } = level(problem, options);
        expect(bounds.weightedLateness).toBeLessThanOrEqual(measures.weightedLateness);
        if (plan.unplaced.length > 0) return;
        expect(bounds.finish).toBeLessThanOrEqual(measures.finish);
        if (measures.weightedLateness === 0) expect(bounds.overtimeMinutes ?? 0).toBeLessThanOrEqual(measures.overtimeMinutes);
      }),
      { ...fixed, numRuns: 20 },
    );
  });

  it("gives the same plan for the same seed and rounds", () => {
    fc.assert(
      fc.property(randomProblem(), fc.nat(1000), (problem, seed) => {
        expect(level(problem, { ...options, seed })).toEqual(level(problem, { ...options, seed }));
      }),
      { ...fixed, numRuns: 8 },
    );
  });

  it("does not mind the order of the input", () => {
    fc.assert(
      fc.property(randomProblem(), (problem) => {
        expect(level(reversed(problem), options).measures).toEqual(level(problem, options).measures);
      }),
      { ...fixed, numRuns: 8 },
    );
  });

  it("starts from the kept plan, so that one more maker never makes it worse", () => {
    fc.assert(
      fc.property(randomProblem({ garments: 4, makers: 4 }), (problem) => {
        const fewer = { ...problem, makers: problem.makers.slice(0, 3) };
        const before = level(fewer, options);
        fc.pre(before.plan.unplaced.length === 0);
        const after = level({ ...problem, current: before.plan }, options);
        expect(after.measures.weightedLateness).toBeLessThanOrEqual(before.measures.weightedLateness);
        if (after.measures.weightedLateness === before.measures.weightedLateness) {
          expect(after.measures.overtimeMinutes).toBeLessThanOrEqual(before.measures.overtimeMinutes);
        }
      }),
      { ...fixed, numRuns: 12 },
    );
  });

  it("ties every late due's time together without a gap", () => {
    fc.assert(
      fc.property(randomProblem(), (problem) => {
        const { late, plan } = level(problem, options);
        for (const { due, links, minutesLate } of late) {
          const end = plan.placed[problem.dues[due]!.node]!.end;
          expect(minutesLate).toBe(end - problem.dues[due]!.at);
          expect(links.at(-1)?.end).toBe(end);
          links.slice(1).forEach((link, i) => {
            expect(link.start).toBe(links[i]!.end);
          });
          for (const link of links) expect(link.end).toBeGreaterThan(link.start);
        }
      }),
      { ...fixed, numRuns: 20 },
    );
  });
});

/** The same problem written down the other way round. */
function reversed(problem: LevellingProblem): LevellingProblem {
  const node = (index: number): number => problem.nodes.length - 1 - index;
  const maker = (index: number): number => problem.makers.length - 1 - index;
  return {
    ...problem,
    makers: problem.makers.toReversed(),
    nodes: problem.nodes
      .toReversed()
      .map((one) => (one.kind === "task" && one.pin !== null ? { ...one, pin: { ...one.pin, makers: one.pin.makers.map(maker) } } : one)),
    precedences: problem.precedences.toReversed().map((link) => ({ ...link, before: node(link.before), after: node(link.after) })),
    dues: problem.dues.toReversed().map((due) => ({ ...due, node: node(due.node) })),
  };
}
