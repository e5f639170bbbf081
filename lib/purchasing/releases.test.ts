import { describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { Lot, Offer } from "#lib/materials/material";
import { hooks, lotOf, needOf, net, offerOf, production, worksOf, yards } from "./goods.fixture";
import { clothReady } from "./releases";

const today = "2027-03-09" as PlainDate;
const skirt = needOf("LM 1", net, yards(10));
const ready = (lots: readonly Lot[], offers: readonly Offer[], need = skirt) => {
  const works = worksOf([need]);
  return clothReady({ materials: [net, hooks], offers, lots, production }, works, today).get(need)!;
};

describe("first day a need may be cut", () => {
  it("is today from a lot on hand, and on arrival and inspection from one on order", () => {
    const offer = offerOf(net, yards(50), 9600);
    expect(ready([lotOf(net, "N", yards(10))], [offer])).toMatchObject({ day: today, from: "shelf" });
    const onOrder = lotOf(net, "N", yards(10), { arrives: "2027-03-11" as PlainDate });
    expect(ready([onOrder], [offer])).toMatchObject({ day: "2027-03-13", from: "on order" });
    const overdue = lotOf(net, "N", yards(10), { arrives: "2027-03-05" as PlainDate });
    expect(ready([overdue], [offer])).toMatchObject({ day: "2027-03-11" });
  });

  it("is today, lead time and inspection when ordered, of the supplier the purchase list takes; a sooner one is told", () => {
    const cheap = offerOf(net, yards(50), 9600, { leadDays: 42 });
    const quick = offerOf(net, yards(50), 12000, { supplier: "Ordwin", leadDays: 3, inspectionDays: 1 });
    expect(ready([], [cheap, quick])).toEqual({
      day: "2027-04-22",
      from: "to order",
      why: "Ordered today from Pellow & Sile, it comes in 42 days and may be cut Thu 22 Apr.",
      sooner: { supplier: "Ordwin", day: "2027-03-13" },
    });
  });

  it("is never when nobody offers it", () => {
    expect(ready([], [])).toMatchObject({ day: null, why: "Nobody offers Stiff net." });
  });

  it("waits for the last of several places for counted things", () => {
    const need = needOf("LM 1", hooks, 30);
    expect(ready([lotOf(hooks, "H", 20)], [offerOf(hooks, 100, 420)], need)).toMatchObject({ day: "2027-03-18", from: "to order" });
  });
});
