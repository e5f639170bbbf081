import { describe, expect, it } from "vitest";
import { wallMinute } from "#lib/calendar/clock";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { dayLines } from "./dayLines";

const day = (text: string) => text as PlainDate;
const task = (maker: string, name: string, garment: string, start: number) => ({ maker, name, garments: [garment], start });

const plan = {
  staging: {
    makers: [
      { code: "m", name: "Mirel" },
      { code: "t", name: "Tobin" },
    ],
    performers: [{ code: "p", name: "Ines" }],
  },
  purchase: {
    lines: [
      { orderBy: day("2027-03-09"), name: "Coutil" },
      { orderBy: day("2027-03-20"), name: "Net" },
    ],
  },
  tasks: [
    task("t", "Cut", "A 1", wallMinute(day("2027-03-09"), 600)),
    task("m", "Tack", "A 2", wallMinute(day("2027-03-09"), 900)),
    task("m", "Mount", "A 2", wallMinute(day("2027-03-09"), 540)),
    task("m", "Hooks", "A 2", wallMinute(day("2027-03-16"), 540)),
  ],
  fittings: [{ performer: "p", name: "Toile fitting", garment: "A 1", start: wallMinute(day("2027-03-10"), 765) }],
} as unknown as StagingPlan;

describe("dayLines", () => {
  it("gives orders, then each maker's work in order of time, then fittings, for seven days and no more", () => {
    expect(dayLines(plan, day("2027-03-09"))).toEqual([
      {
        date: "2027-03-09",
        lines: [
          { who: "Last day to order", what: "Coutil" },
          { who: "Mirel", what: "mount A 2; tack A 2" },
          { who: "Tobin", what: "cut A 1" },
        ],
      },
      { date: "2027-03-10", lines: [{ who: "12:45 Ines", what: "toile fitting A 1" }] },
    ]);
  });

  it("is empty when nothing falls into them", () => expect(dayLines(plan, day("2026-01-01"))).toEqual([]));
});
