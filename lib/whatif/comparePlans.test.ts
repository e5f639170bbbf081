import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { OtherTask } from "#lib/approvals/otherWork";
import { planStaging } from "#lib/planning/planStaging";
import { smallStaging } from "#lib/staging/fixtures";
import type { Staging } from "#lib/staging/staging";
import { compareStagingPlans, type PlanComparison } from "./comparePlans";
import { castToGroups, designsAlone, PLAINLY } from "./fixtures";

const cast = smallStaging();
const designs = designsAlone(cast);
const compared = async (before: Staging, after: Staging) =>
  compareStagingPlans(await planStaging(before, PLAINLY), await planStaging(after, PLAINLY));
const sum = (figures: readonly number[]) => figures.reduce((all, one) => all + one, 0);

/** Every total beside the sum of its parts. */
const sums = ({ garments, materials, fittings, money, before, after }: PlanComparison) =>
  (["before", "after"] as const).map((side) => {
    const total = side === "before" ? before : after;
    const minutesOf = side === "before" ? "minutesBefore" : "minutesAfter";
    return [
      [sum(garments.map((one) => one[side]?.minutes ?? 0)), total.minutes],
      [sum(garments.map((one) => one[side]?.fittingMinutes ?? 0)), total.fittingMinutes],
      [sum(fittings.map((one) => one[minutesOf])), total.fittingMinutes],
      [sum(money.map((one) => one[side])), total.cost],
      [garments.filter((one) => one[side] !== null).length, total.garments],
      ...materials.map(({ material, [side]: quantity }) => [
        sum(garments.flatMap((one) => one.materials.filter((need) => need.material === material).map((need) => need[side]))),
        quantity,
      ]),
    ];
  });

describe("two plans beside each other", () => {
  it("of one staging change nothing", async () => {
    const same = await compared(cast, cast);
    expect(same.garments.filter(({ changed }) => changed)).toEqual([]);
    expect(same.fittings.every(({ change }) => change === "kept")).toBe(true);
    expect(same.before).toEqual(same.after);
  });

  it("have totals that are the sums of their parts", async () => {
    for (const pair of [await compared(designs, cast), await compared(cast, designs)])
      for (const side of sums(pair)) for (const [parts, total] of side) expect(parts).toBe(total);
  });

  it("count work on no garment by itself", async () => {
    const sample: OtherTask = {
      ...{ code: "dye", origin: "sample", title: "Dye sample", garment: null, set: null, material: "net-54", gates: null },
      ...{ skill: "net", minutes: [20, 30, 60], machine: null, priority: 2, due: null, waitsFor: null, shownFor: null },
      ...{ askedBy: "designer", askedOn: null, doneOn: null },
    };
    const label: OtherTask = { ...sample, code: "label", origin: "by hand", garment: "MG 001", material: null, minutes: [5, 10, 15] };
    const more = await compared(cast, { ...cast, otherWork: [sample, label] });
    expect([more.before.otherMinutes, more.after.otherMinutes, more.after.minutes - more.before.minutes]).toEqual([0, 30, 10]);
    for (const side of sums(more)) for (const [parts, total] of side) expect(parts).toBe(total);
  });

  it("keep hours, materials and what is bought when places are cast with bodies of their size groups", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(fc.boolean(), { minLength: 6, maxLength: 6 }), async (chosen) => {
        const { garments, materials, before, after, money } = await compared(
          designs,
          castToGroups(designs, (_, index) => chosen[index] ?? false),
        );
        expect(garments.map((one) => one.after?.minutes)).toEqual(garments.map((one) => one.before?.minutes));
        expect(materials.filter((one) => one.before !== one.after)).toEqual([]);
        expect(money.filter((one) => one.kind !== "labour" && one.before !== one.after)).toEqual([]);
        expect([after.garments, after.minutes, after.fittingMinutes]).toEqual([before.garments, before.minutes, before.fittingMinutes]);
      }),
      { numRuns: 20 },
    );
  });

  it("match a garment by its piece and place, whatever its number", async () => {
    // Ines dances place 1 in both casts: one pair of shoes does for both.
    const twice = {
      ...cast,
      casting: cast.casting.map((row) => (row.performer === "ruth" && row.role === "snow" ? { ...row, performer: "ines" } : row)),
    };
    const { garments } = await compared(cast, twice);
    expect(
      garments
        .filter(({ changed }) => changed)
        .map(({ before, after }) => [before?.number, after?.number, before?.wearers, after?.wearers]),
    ).toEqual([
      ["MG 001", "MG 001", ["ines", "ruth"], ["ines"]],
      ["MG 007", "MG 006", ["size W10"], ["size W10"]],
      ["MG 006", undefined, ["ruth"], undefined],
    ]);
  });
});
