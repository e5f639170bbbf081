import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Need } from "#lib/breakdown/work";
import { addDays } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { hooks, lotOf, needOf, offerOf, production, worksOf } from "./goods.fixture";
import { inWeeks } from "./inWeeks";
import { purchaseList } from "./purchaseList";

/** A Tuesday. */
const today = "2027-03-09" as PlainDate;
const offers = [offerOf(hooks, 100, 420, { leadDays: 7, inspectionDays: 2 })];
const dated = (needs: readonly (readonly [garment: string, quantity: number, days: number])[]) => {
  const works = worksOf(needs.map(([garment, quantity]) => needOf(garment, hooks, quantity)));
  const days = new Map(needs.map(([garment, , after]) => [garment, addDays(today, after)]));
  return { works, cutOn: ({ garment }: Need) => days.get(garment)! };
};

describe("a material over the weeks", () => {
  it("is what is here and due against what is cut, with what is short and when to order it", () => {
    const { works, cutOn } = dated([
      ["LM 1", 30, 0],
      ["LM 2", 50, 14],
      ["LM 3", 40, 21],
    ]);
    const lots = [lotOf(hooks, "A", 60), lotOf(hooks, "B", 30, { arrives: "2027-03-17" as PlainDate })];
    const { lines } = purchaseList({ materials: [hooks], offers, lots, production }, works, cutOn).purchase;
    const weeks = inWeeks(hooks, { lots, offers, lines }, works, cutOn, today);
    // 60 - 30; +30 on 19 March; 60 - 50; 10 - 40 is 30 short in the fourth week: 100 are ordered nine days before 30 March, on the 21st.
    expect(weeks.map(({ week, needed, due, short, bought, toOrder, left }) => [week, needed, due, short, bought, toOrder, left])).toEqual([
      ["2027-03-08", 30, 0, 0, 0, 0, 30],
      ["2027-03-15", 0, 30, 0, 0, 100, 60],
      ["2027-03-22", 50, 0, 0, 0, 0, 10],
      ["2027-03-29", 40, 0, 30, 100, 0, 70],
      ["2027-04-05", 0, 0, 0, 0, 0, 70],
    ]);
  });

  it("adds up: what is needed, due, bought and left, whatever the days", () => {
    const some = fc.array(fc.tuple(fc.integer({ min: 1, max: 90 }), fc.integer({ min: 0, max: 60 })), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(some, fc.integer({ min: 0, max: 200 }), (many, onHand) => {
        const { works, cutOn } = dated(many.map(([quantity, after], at) => [`LM ${at}`, quantity, after] as const));
        const lots = [lotOf(hooks, "A", onHand)];
        const { lines } = purchaseList({ materials: [hooks], offers, lots, production }, works, cutOn).purchase;
        const weeks = inWeeks(hooks, { lots, offers, lines }, works, cutOn, today);
        const total = (of: "needed" | "bought" | "short") => weeks.reduce((sum, week) => sum + week[of], 0);
        expect(total("needed")).toBe(many.reduce((sum, [quantity]) => sum + quantity, 0));
        expect(total("short")).toBe(Math.max(0, total("needed") - onHand));
        expect(weeks.at(-1)!.left).toBe(onHand + total("bought") - total("needed"));
      }),
    );
  });
});
