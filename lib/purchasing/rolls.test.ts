import { describe, expect, it } from "vitest";
import type { Need } from "#lib/breakdown/work";
import type { PlainDate } from "#lib/calendar/plainDate";
import { bone, lotOf, needOf, net, offerOf, production, worksOf, yards } from "./goods.fixture";
import { purchaseList } from "./purchaseList";
import { clothOnRolls } from "./rolls";

const corps = ["LM 1", "LM 2", "LM 3", "LM 4", "LM 5"];
const days: Readonly<Record<string, string>> = { "LM 1": "2027-03-15", "LM 2": "2027-03-16", "LM 3": "2027-03-22", "LM 4": "2027-03-23" };
const cutOn = ({ garment }: Need) => (days[garment] ?? null) as PlainDate | null;
const works = worksOf([...corps.map((garment) => needOf(garment, net, yards(8))), needOf("LM 1", bone, yards(1))]);
const staging = { materials: [net, bone], offers: [offerOf(net, yards(20), 5800)], lots: [lotOf(net, "N", yards(17))], production };

describe("the net of a whole corps", () => {
  it("says how many rolls, from which lot, for whom, and cut by which day", () => {
    const [cloth, ...others] = clothOnRolls({ staging, works, ...purchaseList(staging, works, cutOn) }, ["net"], cutOn);
    expect(others).toEqual([]);
    // Two skirts of 8 yd from the lot of 17; three from two rolls of 20, since a roll holds two.
    expect(cloth).toMatchObject({
      garments: corps,
      gross: yards(40),
      fromShelf: yards(16),
      bought: yards(40),
      cutFrom: "2027-03-15",
      cutBy: "2027-03-23",
    });
    expect(cloth!.rolls.map(({ roll, lot, garments, used, cutBy }) => [roll, lot, garments, used / yards(1), cutBy])).toEqual([
      [1, "N", ["LM 1", "LM 2"], 16, "2027-03-16"],
      [2, null, ["LM 3", "LM 4"], 16, "2027-03-23"],
      [3, null, ["LM 5"], 8, null],
    ]);
  });

  it("has every garment on the rolls it needs", () => {
    const [cloth] = clothOnRolls({ staging, works, ...purchaseList(staging, works, cutOn) }, ["net"], cutOn);
    expect(cloth!.rolls.flatMap(({ garments }) => garments).sort()).toEqual(corps);
  });
});
