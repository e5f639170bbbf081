import { describe, expect, it } from "vitest";
import { batchesInWeek } from "#lib/questions/batchesInWeek";
import { askable, small, TODAY } from "./asked";

/** Hazel's bodice, and another of the same making for the Wind, by the first lines of their costumes: two designs. */
const twoBodices = async (change: object = {}) => {
  const staging = await small(({ pieces }) => {
    const bodice = pieces.find(({ code }) => code === "hazel-bodice")!;
    return { pieces: [bodice, { ...bodice, code: "wind-bodice", name: "Wind bodice", costume: "wind", ...change }] };
  });
  return (await askable(staging, 0)).plan;
};
const WEEKS = ["2027-01-11", "2027-01-18", "2027-01-25", "2027-02-01", "2027-02-08"] as (typeof TODAY)[];

describe("18. What can be batched this week across designs?", () => {
  /**
   * Of a bodice, cutting (set-up 36 min), mounting (30), hooks (33) and pressing (60) may be batched; pattern, seams, bones and the rest may not.
   * One batch of two saves one set-up.
   */
  it("what two bodices have in common in the week, each for one set-up", async () => {
    const plan = await twoBodices();
    const saves = { cut: 36, mount: 30, hooks: 33, press: 60 } as const;
    const found = WEEKS.flatMap((week) => batchesInWeek(plan, TODAY, week).found);
    expect(found.length).toBeGreaterThan(0);
    for (const one of found) {
      expect(one.saves).toBe(saves[one.operation as keyof typeof saves]);
      expect(one.pieces).toEqual(["hazel-bodice", "wind-bodice"]);
    }
  });

  it("the cutting in the week of 18 Jan: both toiles are fitted in the week before, and the velvet may be cut on the 15th", async () => {
    const { found } = batchesInWeek(await twoBodices(), TODAY, WEEKS[1]!);
    expect(found.map(({ operation }) => operation)).toContain("cut");
  });

  it("nothing when they are one set: the plan has batched them already", async () => {
    const plan = await twoBodices();
    const together = { ...plan, garments: plan.garments.map((garment) => ({ ...garment, piece: "hazel-bodice" })) };
    expect(WEEKS.flatMap((week) => batchesInWeek(together, TODAY, week).found)).toEqual([]);
  });

  it("nothing across different skills: a bodice and a unitard are cut by different people", async () => {
    const plan = await twoBodices({ construction: "leotard", parameters: {}, materials: { stretch: "elastane-grey" } });
    const operations = WEEKS.flatMap((week) => batchesInWeek(plan, TODAY, week).found.map(({ operation }) => operation));
    expect(operations).not.toContain("cut");
  });

  it("nothing in a week with no work", async () => {
    expect(batchesInWeek(await twoBodices(), TODAY, "2027-03-08" as typeof TODAY).found).toEqual([]);
  });
});
