import { describe, expect, it } from "vitest";
import { breakDown } from "#lib/breakdown/breakDown";
import { garmentsOf } from "#lib/casting/garments";
import { purchaseList } from "#lib/purchasing/purchaseList";
import { smallStaging } from "#lib/staging/fixtures";
import { garmentCost, workedSoFar } from "./garmentCost";

describe("what a garment is reckoned to cost", () => {
  // No lots: everything is bought.
  const staging = { ...smallStaging(), lots: [] };
  const garments = garmentsOf(staging);
  const works = breakDown(staging, garments);
  const { purchase } = purchaseList(staging, works, () => null);
  const costs = garments.map((garment, at) => garmentCost(garment, works[at]!, staging, purchase));

  it("shares the purchase list out, nothing lost but the halves of a penny", () => {
    const bought = purchase.lines.reduce((sum, { cost }) => sum + cost, 0);
    expect(bought).toBeGreaterThan(0);
    const shared = costs.reduce((sum, { goods }) => sum + goods, 0);
    expect(Math.abs(shared - bought)).toBeLessThanOrEqual(garments.length / 2);
  });

  it("takes the price of what is bought whole, and adds up", () => {
    const shoes = costs[garments.findIndex(({ piece }) => piece === "shoes")]!;
    expect(shoes).toMatchObject({ price: 1850, labour: 0, goods: 0 });
    for (const { labour, goods, price, total } of costs) expect(total).toBe(labour + goods + price);
  });
});

describe("what was worked on a garment", () => {
  const { makers } = smallStaging();
  // Orla Venn: 19.51 an hour.
  const task = { garments: ["MG 001"], maker: "orla", skill: "net", worked: 90 } as const;

  it("is its share of each task, at the rate of whoever the plan has for it", () => {
    expect(workedSoFar([task], makers)).toEqual({ minutes: 90, cost: 2927 });
    expect(workedSoFar([{ ...task, garments: ["MG 001", "MG 002"] }], makers)).toEqual({ minutes: 45, cost: 1463 });
    expect(workedSoFar([], makers)).toEqual({ minutes: 0, cost: 0 });
  });

  it("is at the mean of those who have the skill when nobody is planned", () => {
    expect(workedSoFar([{ ...task, maker: null }], makers).cost).toBeGreaterThan(0);
  });
});
