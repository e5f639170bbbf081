import { describe, expect, it } from "vitest";
import { wagnerWhitin } from "#lib/purchasing/lotSizing/wagnerWhitin";
import published from "./lotsizing.json";
import { lotsCost, silverMeal } from "./silverMeal";

/** Each entry of lotsizing.json carries its source. */
const examples = published.lotSizing.map((one) => ({
  ...one,
  setups: Array.isArray(one.setup) ? one.setup : one.demand.map(() => one.setup as number),
}));
type Example = (typeof examples)[number];
const exact = ({ demand, setups, holding }: Example) => wagnerWhitin({ demand, holding, order: (period) => setups[period]! });
const bySilverMeal = ({ demand, setups, holding }: Example) => silverMeal(demand, { setup: setups[0]!, holding });
const costOf = ({ demand, setups, holding }: Example, lots: readonly number[]) => lotsCost(demand, lots, setups, holding);
const example = (id: string) => examples.find((one) => one.id === id)!;

describe("dynamic lot sizing", () => {
  it("finds the 864 of Wagner & Whitin 1958, and the optimum of every shorter horizon", () => {
    const one = example("wagner-whitin-1958");
    expect(exact(one).cost).toBe(864);
    expect(exact(one).throughPeriod).toEqual(one.periodCosts);
    expect(costOf(one, exact(one).lots)).toBe(864);
    expect(costOf(one, one.oneOptimalPlan!)).toBe(864);
  });

  it.each(examples.flatMap((one) => (one.plan ? [{ id: one.id, one }] : [])))("meets $id", ({ one }) => {
    expect(exact(one).cost).toBeCloseTo(one.optimum!, 6);
    expect(exact(one).lots).toEqual(one.plan);
  });

  it("costs $501.20 for the twelve months of Peterson & Silver, as Silver-Meal does", () => {
    const one = example("peterson-silver-12");
    expect(exact(one).cost).toBeCloseTo(501.2, 6);
    expect(exact(one).lots).toEqual(one.wagnerWhitin!.plan);
    expect(bySilverMeal(one)).toEqual(one.silverMeal!.plan);
  });

  it("costs what Silver-Meal does in the machine shop, 310, and 50 less where the rule goes astray", () => {
    const shop = example("silver-meal-machine-shop");
    expect(bySilverMeal(shop)).toEqual(shop.silverMealPlan);
    expect([costOf(shop, bySilverMeal(shop)), exact(shop).cost]).toEqual([310, shop.wwOptimum]);
    // The page that prints this example adds the price of the goods to the average, and so makes other lots.
    const astray = example("silver-meal-trap");
    expect(bySilverMeal(astray)).toEqual(astray.recomputedPlan);
    expect(bySilverMeal(astray)).not.toEqual(astray.publishedPlan);
    expect([costOf(astray, bySilverMeal(astray)), exact(astray).cost]).toEqual([992.5, 942.5]);
  });
});
