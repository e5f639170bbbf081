import { describe, expect, it } from "vitest";
import type { Offer } from "#lib/materials/material";
import { allUnitsOrder, economicOrder, incrementalOrder } from "#lib/purchasing/lotSizing/economicOrder";
import { lotsCost, partPeriod, silverMeal } from "#lib/purchasing/lotSizing/rules";
import { wagnerWhitin } from "#lib/purchasing/lotSizing/wagnerWhitin";
import { orderOf } from "#lib/purchasing/packs";
import published from "./lotsizing.json";

/** Each entry of lotsizing.json carries its source. */
const examples = published.lotSizing.map((one) => ({
  ...one,
  setups: Array.isArray(one.setup) ? one.setup : one.demand.map(() => one.setup as number),
}));
const exact = ({ demand, setups, holding }: (typeof examples)[number]) =>
  wagnerWhitin({ demand, holding, order: (period) => setups[period]! });
const example = (id: string) => examples.find((one) => one.id === id)!;

describe("dynamic lot sizing", () => {
  it("finds the 864 of Wagner & Whitin 1958, and the optimum of every shorter horizon", () => {
    const one = example("wagner-whitin-1958");
    const plan = exact(one);
    expect(plan.cost).toBe(864);
    expect(plan.throughPeriod).toEqual(one.periodCosts);
    // The order their page prints: lots of one plan of that cost.
    const printed = one.oneOptimalPlan!;
    let left = 0;
    const cost = printed.reduce((sum, lot, period) => {
      left += lot - one.demand[period]!;
      return sum + (lot > 0 ? one.setups[period]! : 0) + left;
    }, 0);
    expect(cost).toBe(864);
  });

  it.each(examples.flatMap((one) => ("optimum" in one && one.plan ? [{ id: one.id, one }] : [])))("meets $id", ({ one }) => {
    const plan = exact(one);
    expect(plan.cost).toBeCloseTo(one.optimum!, 6);
    expect(plan.lots).toEqual(one.plan);
  });

  it("the plan of Peterson & Silver costs $501.20 by both rules", () => {
    const one = example("peterson-silver-12");
    const costs = { setup: one.setups[0]!, holding: one.holding };
    expect(exact(one).cost).toBeCloseTo(501.2, 6);
    expect(silverMeal(one.demand, costs)).toEqual(one.silverMeal!.plan);
    expect(lotsCost(one.demand, one.silverMeal!.plan, costs)).toBeCloseTo(501.2, 6);
  });
});

describe("Silver-Meal", () => {
  it("makes the lots of the machine shop", () => {
    const one = example("silver-meal-machine-shop");
    const costs = { setup: one.setups[0]!, holding: one.holding };
    expect(silverMeal(one.demand, costs)).toEqual(one.silverMealPlan);
    expect(lotsCost(one.demand, one.silverMealPlan!, costs)).toBe(one.silverMealCost);
    expect(exact(one).cost).toBe(one.wwOptimum);
  });

  it("leaves what the goods cost out of the average: adding it, as one page does, makes other lots", () => {
    const one = example("silver-meal-trap");
    const costs = { setup: one.setups[0]!, holding: one.holding };
    const lots = silverMeal(one.demand, costs);
    expect(lots).toEqual(one.recomputedPlan);
    expect(lots).not.toEqual(one.publishedPlan);
    expect(lotsCost(one.demand, lots, costs)).toBe(one.recomputedCost);
    expect(exact(one).cost).toBe(one.wwOptimum);
  });

  it("and part-period balancing are never cheaper than the exact lots", () => {
    for (const one of examples) {
      const costs = { setup: one.setups[0]!, holding: one.holding };
      const best = wagnerWhitin({ demand: one.demand, holding: costs.holding, order: () => costs.setup }).cost;
      for (const rule of [silverMeal, partPeriod])
        expect(lotsCost(one.demand, rule(one.demand, costs), costs)).toBeGreaterThanOrEqual(best - 1e-9);
    }
  });
});

describe("economic order", () => {
  const eoq = published.eoq;
  it("is the square root of Snyder & Shen's example", () => {
    const one = eoq.find(({ id }) => id === "snyder-shen-3.1")!;
    const { quantity, cost } = economicOrder(one.D, one.K, one.h!);
    expect(quantity).toBeCloseTo(one.Q!, 4);
    expect(cost).toBeCloseTo(one.cost!, 5);
  });

  it.each(eoq.flatMap((one) => (one.breakpoints ? [{ id: one.id, one }] : [])))("meets the price breaks of $id", ({ one }) => {
    const demand = { demand: one.D, setup: one.K, holdingRate: one.holdingRate! };
    const steps = one.breakpoints!.map((from, at) => ({ from, price: one.unitCosts![at]! }));
    expect(allUnitsOrder(demand, steps).quantity).toBe(one.allUnits!.Q);
    expect(allUnitsOrder(demand, steps).cost).toBeCloseTo(one.allUnits!.cost, 2);
    if (one.incremental) {
      expect(incrementalOrder(demand, steps).quantity).toBeCloseTo(one.incremental.Q, 5);
      expect(incrementalOrder(demand, steps).cost).toBeCloseTo(one.incremental.cost, 3);
    }
  });
});

describe("an order's price", () => {
  const offer = (one: (typeof published.eoq)[number], breaks: "all" | "incremental"): Offer => ({
    ...{ material: "M", supplier: "S", pack: 1, minimumPacks: 1, leadDays: 0, inspectionDays: 0, breaks, orderCost: 0 },
    // The unit at a break is the first of the next price where all take it, the last of its own where each keeps its own.
    prices: one.breakpoints!.map((at, step) => ({
      from: step === 0 ? 1 : breaks === "all" ? at : at + 1,
      price: Math.round(100 * one.unitCosts![step]!),
    })),
  });
  /** A year's cost of ordering so much each time, in minor units: goods, orders and keeping. */
  const year = (one: (typeof published.eoq)[number], breaks: "all" | "incremental", quantity: number): number => {
    const { cost } = orderOf(offer(one, breaks), quantity);
    return ((cost + 100 * one.K) * one.D) / quantity + (one.holdingRate! * cost) / 2;
  };

  it("is that of the discount store: 700 come to 25,700.00 a year, 1,000 to 24,725.00, 2,000 to 24,822.50", () => {
    const store = published.eoq.find(({ id }) => id === "heizer-render-discount-store")!;
    for (const [quantity, cost] of store.candidates!) expect(year(store, "all", quantity!)).toBeCloseTo(100 * cost!, 6);
  });

  it("with incremental breaks meets the published cost at the published quantity, to a whole unit", () => {
    for (const one of published.eoq.filter(({ incremental }) => incremental)) {
      const { Q, cost } = one.incremental!;
      expect(year(one, "incremental", Math.round(Q!)) / (100 * cost!)).toBeCloseTo(1, 6);
    }
  });
});
