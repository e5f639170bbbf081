import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { aimsOf } from "../aims";
import { checkPlan } from "../checker/checkPlan";
import { compile } from "../compiled";
import { measuresOf } from "../measures";
import { PlanMaker } from "../planMaker";
import { planOf } from "../planOf";
import { Chance } from "../random";
import { PLAIN } from "../rules";
import { randomProblem } from "../testing/randomProblem";
import { Improver } from "./improver";
import { compareStandings } from "./standing";
import { Tally } from "./tally";

const fixed = { seed: 11, numRuns: 40 };

describe("ruin and re-insert", () => {
  it("keeps every plan legal and never leaves the best one for a worse", () => {
    fc.assert(
      fc.property(randomProblem(), fc.integer({ min: 1, max: 1000 }), (problem, seed) => {
        const maker = new PlanMaker(compile(problem), 10);
        const { score, choices } = maker.byRule(PLAIN);
        const improver = new Improver(score.schedule, choices, maker.outlook, new Chance(seed), aimsOf(problem));
        for (let round = 0; round < 4; round++) {
          const before = improver.standing;
          const { best } = improver.improve(60);
          expect(checkPlan(problem, best.score.plan)).toEqual([]);
          expect(compareStandings(improver.standing, before)).toBeLessThanOrEqual(0);
        }
      }),
      fixed,
    );
  });

  it("counts, change by change, what the whole plan measures", () => {
    fc.assert(
      fc.property(randomProblem(), fc.integer({ min: 1, max: 1000 }), (problem, seed) => {
        const maker = new PlanMaker(compile(problem), 10);
        const { score, choices } = maker.byRule(PLAIN);
        const kept = { ...problem, current: planOf(score.schedule) };
        const again = new PlanMaker(compile(kept), 10).byRule(PLAIN);
        const improver = new Improver(again.score.schedule, choices, maker.outlook, new Chance(seed), aimsOf(kept, ["visits"]));
        improver.improve(100);
        const plan = planOf(improver.schedule);
        const measures = measuresOf(kept, plan);
        for (const tally of [improver.tally, new Tally(improver.schedule)])
          expect({
            unplaced: tally.unplaced,
            weightedLateness: tally.lateness,
            overtimeMinutes: tally.overtime,
            unevenness: tally.unevenness / 1e6,
            moved: tally.moved,
          }).toEqual({
            unplaced: plan.unplaced.length,
            weightedLateness: measures.weightedLateness,
            overtimeMinutes: measures.overtimeMinutes,
            unevenness: measures.unevenness,
            moved: measures.moved,
          });
        expect(improver.schedule.visitCount).toBe(measures.visits);
      }),
      fixed,
    );
  });
});
