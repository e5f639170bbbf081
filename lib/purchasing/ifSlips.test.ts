import { describe, expect, it } from "vitest";
import type { Need } from "#lib/breakdown/work";
import { addDays } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { lotOf, needOf, net, offerOf, production, worksOf, yards } from "./goods.fixture";
import { ifSlips } from "./ifSlips";

const today = "2027-03-09" as PlainDate;
const days: Readonly<Record<string, number>> = { "LM 1": 12, "LM 2": 15, "LM 3": 30 };
const slack: Readonly<Record<string, number>> = { "LM 1": 1, "LM 2": 10, "LM 3": 0 };
const works = worksOf(Object.keys(days).map((garment) => needOf(garment, net, yards(10))));
const slips = (by: number, lots = [lotOf(net, "S", yards(10))]) =>
  ifSlips({ materials: [net], offers: [offerOf(net, yards(50), 9600)], lots, production }, works, {
    days: by,
    orderedOn: today,
    cutOn: ({ garment }: Need) => addDays(today, days[garment]!),
    slackOf: (garment) => slack[garment]!,
  });

describe("if an order slips", () => {
  it("holds up what is cut before it comes, and makes late what has less to spare than it waits", () => {
    // LM 1 is cut from the shelf. Ordered on 9 March, the rest may be cut on the 18th; eight days later on the 26th.
    expect(slips(0)).toMatchObject([{ lot: null, supplier: "Pellow & Sile", ready: "2027-03-18", heldUp: [] }]);
    expect(slips(8)).toMatchObject([
      { slipped: "2027-03-26", heldUp: [{ garment: "LM 2", cutOn: "2027-03-24", days: 2, slack: 10, late: false }] },
    ]);
    expect(slips(17)[0]!.heldUp.map(({ garment, days: held, late }) => [garment, held, late])).toEqual([["LM 2", 11, true]]);
    expect(slips(22)[0]!.heldUp.map(({ garment, days: held, late }) => [garment, held, late])).toEqual([
      ["LM 2", 16, true],
      ["LM 3", 1, true],
    ]);
  });

  it("asks of a lot on order the same as of an order, with its inspection", () => {
    const lots = [lotOf(net, "S", yards(30), { arrives: "2027-03-18" as PlainDate })];
    expect(slips(0, lots)).toMatchObject([{ lot: "S", ready: "2027-03-20", heldUp: [] }]);
    expect(slips(3, lots)[0]!.heldUp).toMatchObject([{ garment: "LM 1", days: 2, late: true }]);
  });
});
