import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkPlan } from "../checker/checkPlan";
import { level } from "../level";
import type { LevellingProblem } from "../problem";
import { randomProblem } from "../testing/randomProblem";
import { follows, tinyFitting, tinyMaker, tinyProblem, tinyTask } from "../testing/tinyProblem";

const options = { seed: 3, rounds: 2, stop: () => false };
const fixed = { seed: 23, numRuns: 10, endOnFailure: true };
const DAY = 1440;

describe("repairing a kept plan", () => {
  it("moves nothing where nothing has changed, when everybody works alone", () => {
    fc.assert(
      fc.property(randomProblem(), (given) => {
        const problem = {
          ...given,
          nodes: given.nodes.map((node) => (node.kind === "task" ? { ...node, crew: node.crew.slice(0, 1) } : node)),
        };
        const { plan } = level(problem, options);
        const again = level({ ...problem, current: plan }, { ...options, rounds: 0 });
        expect(again.measures).toMatchObject({ moved: 0, visits: plan.visits.length });
        expect(again.plan.placed.map((placement) => placement?.start)).toEqual(plan.placed.map((placement) => placement?.start));
      }),
      fixed,
    );
  });

  it("is legal whoever is away, and moves no more than fresh planning would", () => {
    fc.assert(
      fc.property(randomProblem(), fc.nat(3), fc.integer({ min: 0, max: 12 }), (problem, away, from) => {
        const current = level(problem, options).plan;
        const changed = { ...without(problem, away, from * DAY, (from + 4) * DAY), current };
        const { plan, measures } = level(changed, options);
        expect(checkPlan(changed, plan)).toEqual([]);
        const fresh = level({ ...changed, current: null }, options);
        if (measures.weightedLateness === fresh.measures.weightedLateness && measures.overtimeMinutes === fresh.measures.overtimeMinutes)
          expect(measures.moved).toBeLessThanOrEqual(movedBetween(current, fresh.plan));
      }),
      fixed,
    );
  });

  it("puts what a maker who is away would have done beside what stays, with what follows it", () => {
    const problem = tinyProblem({
      makers: [tinyMaker("first", [1000, 0]), tinyMaker("second", [1000, 1000])],
      nodes: [
        tinyTask("a/sew", 480),
        tinyTask("b/sew", 300),
        tinyFitting("a/fit"),
        tinyTask("a/hem", 60),
        tinyTask("c/sew", 480, { release: DAY }),
      ],
      precedences: [follows(0, 2), follows(2, 3)],
      dues: [{ node: 3, at: 9 * DAY, weight: 1, label: "a" }],
    });
    const current = level(problem, { ...options, rounds: 0 }).plan;
    expect(current.placed[0]!.makers[0]!.maker).toBe(0);
    const changed = { ...without(problem, 0, 0, DAY), current };
    const { plan } = level(changed, options);
    expect(checkPlan(changed, plan)).toEqual([]);
    expect(plan.placed[1]).toEqual(current.placed[1]);
    expect(plan.placed[4]!.makers).toEqual(current.placed[4]!.makers);
    expect(plan.placed[2]!.start).toBeGreaterThanOrEqual(plan.placed[0]!.end);
  });

  it("leaves pinned work where it is", () => {
    fc.assert(
      fc.property(randomProblem(), (problem) => {
        const current = level(problem, options).plan;
        const nodes = problem.nodes.map((node, index) => {
          const placement = current.placed[index];
          if (node.kind === "fitting" || !placement || placement.makers.length !== 1 || placement.start > 5 * DAY) return node;
          return { ...node, pin: { start: placement.start, makers: [placement.makers[0]!.maker] } };
        });
        const { plan } = level({ ...problem, nodes, current }, options);
        expect(checkPlan({ ...problem, nodes, current }, plan)).toEqual([]);
        nodes.forEach((node, index) => {
          if (node.pin !== null && current.placed[index] !== null) expect(plan.placed[index]?.start).toBe(current.placed[index]?.start);
        });
      }),
      fixed,
    );
  });
});

function without(problem: LevellingProblem, away: number, from: number, to: number): LevellingProblem {
  const makers = problem.makers.map((maker, index) =>
    index === away ? { ...maker, calendar: maker.calendar.filter(({ start, end }) => end <= from || start >= to) } : maker,
  );
  return { ...problem, makers };
}

function movedBetween(a: { placed: readonly (Placed | null)[] }, b: { placed: readonly (Placed | null)[] }): number {
  const sign = (placed: Placed | null | undefined): string =>
    placed ? `${Math.floor(placed.start / DAY)} ${placed.makers.map(({ maker }) => maker).join()}` : "none";
  return a.placed.filter((placed, node) => placed !== null && sign(placed) !== sign(b.placed[node])).length;
}

interface Placed {
  readonly start: number;
  readonly makers: readonly { readonly maker: number }[];
}
