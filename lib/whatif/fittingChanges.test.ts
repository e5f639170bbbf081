import { describe, expect, it } from "vitest";
import type { Wearer } from "#lib/casting/wardrobe";
import { fitting, garment, staging, work } from "#lib/planning/fixtures";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { fittingChanges } from "./fittingChanges";

const wearer = (performer: string | null, changes: Partial<Wearer> = {}): Wearer => ({
  performer,
  sizeGroup: "m",
  cast: "first",
  place: 1,
  standing: "cast",
  ...changes,
});

/** One garment of these wearers: a first fitting for the first of them, a cover fitting for each of the others. */
const side = (...wearers: readonly Wearer[]) => {
  const fittings = wearers.map((_, at) => fitting(at === 0 ? "first" : "cover", { wearer: at, minutes: at === 0 ? 30 : 15 }));
  const one = garment("X 1", { wearers });
  return { garment: one, plan: { staging: staging(), works: [work("X 1", [], fittings)] } as unknown as StagingPlan };
};
const changes = (before: ReturnType<typeof side>, after: ReturnType<typeof side>) =>
  fittingChanges({ before: before.garment, after: after.garment }, before.plan, after.plan).map((one) => [
    one.change,
    one.name,
    one.before,
    one.after,
    one.minutesAfter - one.minutesBefore,
  ]);

describe("the fittings of a garment", () => {
  it("get a name when their place is cast, and another when it is cast again", () => {
    expect(changes(side(wearer(null)), side(wearer("mira")))).toEqual([["named", "first fitting", null, "mira", 0]]);
    expect(changes(side(wearer("mira")), side(wearer("ruth")))).toEqual([["other performer", "first fitting", "mira", "ruth", 0]]);
    expect(changes(side(wearer("mira")), side(wearer("mira")))).toEqual([["kept", "first fitting", "mira", "mira", 0]]);
  });

  it("are added with a cover and removed with a second body", () => {
    const cover = wearer("bo", { standing: "cover" });
    expect(changes(side(wearer("mira")), side(wearer("mira"), cover))[1]).toEqual(["added", "cover fitting", null, "bo", 15]);
    const second = wearer(null, { cast: "second" });
    expect(changes(side(wearer(null), second), side(wearer("mira")))).toEqual([
      ["named", "first fitting", null, "mira", 0],
      ["removed", "cover fitting", null, null, -15],
    ]);
  });

  it("all go with the garment", () => {
    const { garment: gone, plan } = side(wearer("mira"));
    expect(fittingChanges({ before: gone, after: null }, plan, plan).map(({ change }) => change)).toEqual(["removed"]);
  });
});
