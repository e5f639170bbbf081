import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { HOLDING, inTime } from "./deliveries";
import { hooks, needOf, offerOf, production, worksOf } from "./goods.fixture";
import { purchaseList } from "./purchaseList";

const first = "2027-03-08" as PlainDate;
const offer = offerOf(hooks, 10, 5200, { orderCost: 1000 });
const needs = (...weeks: readonly (readonly [week: number, quantity: number])[]) =>
  weeks.map(([week, quantity]) => ({ quantity, day: addDays(first, 7 * week) }));

describe("one order or several", () => {
  it("is no question when nothing is charged for an order, or keeping costs less than one", () => {
    expect(inTime({ ...offer, orderCost: 0 }, needs([0, 100], [20, 100]))).toBeNull();
    expect(inTime(offer, needs([0, 100]))).toBeNull();
    // A pack of 52.00 costs 20p a week to keep: ten packs for four weeks 8.00, less than the 10.00 of an order.
    expect(HOLDING).toBe(200);
    expect(inTime(offer, needs([0, 100], [4, 100]))).toBeNull();
  });

  it("is two orders where the second costs less than keeping", () => {
    // Ten packs for twenty weeks are 40.00 of keeping.
    const times = inTime(offer, needs([0, 100], [20, 100]))!;
    expect(times.deliveries.map(({ order, neededBy }) => [order.packs, neededBy])).toEqual([
      [10, "2027-03-08"],
      [10, "2027-07-26"],
    ]);
    expect(times).toMatchObject({ cost: 20 * 5200 + 2 * 1000, atOnce: 20 * 5200 + 1000 + 4000 });
  });

  it("says on the line why, charges each order, and keeps a set together", () => {
    const line = (oneLotSet: string | null) =>
      purchaseList(
        { materials: [hooks], offers: [offer], lots: [], production },
        worksOf([needOf("LM 1", hooks, 100, { oneLotSet }), needOf("LM 2", hooks, 100, { oneLotSet })]),
        ({ garment }) => (garment === "LM 1" ? first : addDays(first, 140)),
      ).purchase;
    const parted = line(null);
    expect(parted).toMatchObject({ materials: 104_000 + 2000, carriage: [{ cost: 2000 }] });
    expect(parted.lines[0]!.deliveries.map(({ packs, orderBy }) => [packs, orderBy])).toEqual([
      [10, "2027-02-27"],
      [10, "2027-07-17"],
    ]);
    expect(parted.lines[0]!.arithmetic).toContain("in 2 orders, £30.00 less with carriage and keeping than at once");
    expect(line("HERONS").lines[0]!.deliveries).toHaveLength(1);
  });

  it("never costs more than all at once, and brings all that is needed", () => {
    const some = fc.array(fc.tuple(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 1, max: 400 })), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(some, fc.integer({ min: 0, max: 3000 }), (weeks, orderCost) => {
        const times = inTime({ ...offer, orderCost }, needs(...weeks));
        if (!times) return;
        expect(times.cost).toBeLessThanOrEqual(times.atOnce);
        const packs = times.deliveries.reduce((sum, { order }) => sum + order.packs, 0);
        expect(packs * offer.pack).toBeGreaterThanOrEqual(weeks.reduce((sum, [, quantity]) => sum + quantity, 0));
      }),
    );
  });
});
