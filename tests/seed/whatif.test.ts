import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { breakDown } from "#lib/breakdown/breakDown";
import type { GarmentWork } from "#lib/breakdown/work";
import { garmentsOf } from "#lib/casting/garments";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { Staging } from "#lib/staging/staging";
import { LENGTH_PER_YARD } from "#lib/units/quantities";
import { compareStagingPlans, type PlanComparison } from "#lib/whatif/comparePlans";
import { castToGroups, designsAlone } from "#lib/whatif/fixtures";
import { plannedStaging, seedStaging } from "./plannedFolder";

/** The small staging with nobody cast, and then cast as it is: with bodies of their own, and a cover. */
let designs: Staging;
let before: StagingPlan;
let compared: PlanComparison;
beforeAll(async () => {
  const cast = await seedStaging("small");
  designs = designsAlone(cast);
  before = plannedStaging(designs, 3);
  compared = compareStagingPlans(before, plannedStaging(cast, 3));
});

const worksOf = (staging: Staging) => breakDown(staging, garmentsOf(staging)).map((work): GarmentWork => ({ ...work, notes: [] }));
const bought = ({ purchase }: StagingPlan) =>
  purchase.lines.map(({ supplier, material, gross, packs, cost }) => [supplier, material, gross, packs, cost]).sort();

describe("designs alone", () => {
  it("give a legal plan in which everything has its place", () => {
    expect(designs.performers).toEqual([]);
    expect(before.garments).toHaveLength(12);
    expect(before.answer.plan.unplaced).toEqual([]);
    expect(before.answer.plan.visits).toEqual([]);
  });

  it("give the very work and cloth that they give cast with bodies of their size groups, whoever is cast first", () => {
    const uncast = worksOf(designs);
    fc.assert(
      fc.property(fc.array(fc.boolean(), { minLength: 9, maxLength: 9 }), (chosen) => {
        expect(worksOf(castToGroups(designs, (_, index) => chosen[index] ?? false))).toEqual(uncast);
      }),
      { numRuns: 25 },
    );
  });

  it("give the same hours of every skill, fittings among them, the same purchase list and the same cost of materials", () => {
    const after = plannedStaging(
      castToGroups(designs, () => true),
      0,
    );
    expect(after.fittings).toHaveLength(before.works.flatMap((work) => work.fittings).length);
    expect(after.summary.minutesBySkill).toEqual(before.summary.minutesBySkill);
    expect(before.summary.minutesBySkill.fit).toBe(18 * 60 + 25);
    expect(after.summary.materialCost).toBe(before.summary.materialCost);
    expect(bought(after)).toEqual(bought(before));
  });
});

describe("casting the small staging", () => {
  it("names the 39 fittings there were, and adds a cover fitting of Petra for each garment of the Lark", () => {
    const told = (kind: string) => compared.fittings.filter(({ change }) => change === kind);
    expect(told("named")).toHaveLength(39);
    expect(told("added").map(({ garment, after, minutesAfter }) => [garment, after, minutesAfter])).toEqual([
      ["WL 001", "petra", 15],
      ["WL 010", "petra", 15],
      ["WL 011", "petra", 15],
    ]);
    expect(compared.fittings).toHaveLength(42);
  });

  it("cuts 23 rows of soft net deeper where a dancer is taller than her size group, and shallower where shorter", () => {
    // Waist to floor: Petra 106 for 104 cm, Suri 99 for 101, Wren 108 for 104: 23 rows x (2 - 2 + 4) cm.
    const net = compared.materials.find(({ material }) => material === "net-soft-white")!;
    expect((net.after - net.before) / LENGTH_PER_YARD).toBeCloseTo((23 * 4) / 91.44, 2);
    expect(compared.materials.find(({ material }) => material === "net-stiff-white")).toMatchObject({ before: expect.any(Number) });
  });

  it("changes the whole by what it changes in the garments", () => {
    const sum = (figures: readonly number[]) => figures.reduce((all, one) => all + one, 0);
    const { before: was, after: is, garments, money } = compared;
    expect(sum(garments.map((one) => one.after!.minutes - one.before!.minutes))).toBe(is.minutes - was.minutes);
    expect(sum(garments.map((one) => one.after!.fittingMinutes - one.before!.fittingMinutes))).toBe(45);
    expect(sum(money.map((one) => one.after - one.before))).toBe(is.cost - was.cost);
  });
});
