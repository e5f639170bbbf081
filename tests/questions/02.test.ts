import { beforeAll, describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { Asked } from "#lib/questions/answer";
import { recastCorps } from "#lib/questions/recastCorps";
import { ask, askable, only } from "./asked";

let asked: Asked;
beforeAll(async () => {
  asked = await askable(await only("flake-tutu"), 0);
});
const forSuri = (day: string, performer: string) =>
  recastCorps(asked.plan, { role: "flake", place: 2, performer, day: day as PlainDate }).map(({ from, effect }) => [
    from,
    effect.minutes,
    effect.fittings.filter(({ change }) => change !== "removed").map(({ minutesAfter }) => minutesAfter),
    effect.garments.map(({ garment, kind }) => [garment.number, kind]),
  ]);

/** Of one tutu: toile 30, first 45, second 30, final 20 min. */
const FITTINGS = [30, 45, 30, 20];

describe("2. If casting of the corps changes today, how many fittings and hours does that add, and to whom?", () => {
  /**
   * Suri's high hip is 30 in, Oda's 31. WL 002 is the second of its set, so 95% (mount 90%). Layers are sewn to five rounds of it, 3.81 and 3.937 m:
   * knickers 40 + 3.937 x 1219 s = 120.0 x 0.95 = 114 (112), mount 20 + 87.0 = 107.0 x 0.90 = 97 (94), seams 30 + 3.12 x 2311 s = 150.2 x 0.95 = 143
   * (141), edges 15 + 1.65 x 1311 s + 54 = 105.1 x 0.95 = 100 (99), join 30 + 0.787 x 6861 s = 120.0 x 0.95 = 115 (112): 2 + 3 + 2 + 1 + 3 = 11.
   */
  it("11 minutes and four fittings when Oda comes in before anything is begun: her tutu is cut to her", () => {
    expect(forSuri("2027-01-11", "oda")).toEqual([["suri", 11, FITTINGS, [["WL 002", "recut"]]]]);
  });

  /** The alteration of the construction, 225 min, and a new label, 6. */
  it("3 h 51 once it is begun: it is altered", () => {
    expect(forSuri("2027-02-20", "oda")).toEqual([["suri", 231, FITTINGS, [["WL 002", "refit"]]]]);
  });

  it("twelve fittings of 6 h 15 when each of the three goes to somebody new, who has the figures of the size group", async () => {
    const { says } = await ask(2, asked);
    expect(says[0]).toContain("3 places, each by itself");
    expect(says[0]).toContain("12 fittings of 6 h 15");
    expect(says.slice(1)).toHaveLength(3);
  });

  it("says to whom", async () => {
    expect((await ask(2, asked, { place: "2", performer: "oda", day: "2027-02-20" })).says).toEqual([
      "Snowflakes, recast on Sat 20 Feb: 3 h 51 more work, and 4 fittings of 2 h 05 for whoever comes in.",
      "Oda Brandt for Suri Amand: 3 h 51 more work, 4 fittings.",
    ]);
  });
});
