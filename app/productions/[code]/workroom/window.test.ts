import { describe, expect, it } from "vitest";
import { wallMinute } from "#lib/calendar/clock";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { windowOf } from "./window";

const day = (text: string) => text as PlainDate;
const work = (from: string, to: string) => ({ start: wallMinute(day(from), 540), end: wallMinute(day(to), 1020) });
const plan = { tasks: [work("2027-01-13", "2027-01-15"), work("2027-03-08", "2027-03-10")], fittings: [] } as unknown as StagingPlan;

describe("windowOf", () => {
  it("begins with the week of the first work while that is to come", () => {
    expect(windowOf(plan, day("2026-11-25"), undefined)).toEqual({
      from: "2027-01-11",
      to: "2027-02-21",
      earlier: null,
      later: "2027-02-22",
      zoom: "six weeks",
    });
  });

  it("follows the day, ends with the last work and leads back to the first", () => {
    expect(windowOf(plan, day("2027-02-24"), undefined)).toEqual({
      from: "2027-02-22",
      to: "2027-03-10",
      earlier: "2027-01-11",
      later: null,
      zoom: "six weeks",
    });
  });

  it("keeps what is asked within the plan, and reads nonsense as unasked", () => {
    expect(windowOf(plan, day("2027-01-13"), "2099-01-01").from).toBe("2027-03-08");
    expect(windowOf(plan, day("2027-01-13"), "soon").from).toBe("2027-01-11");
  });

  it("draws a week, a fortnight or the whole plan when asked", () => {
    const zoomed = (zoom: string, from?: string) => windowOf(plan, day("2027-01-13"), from, zoom);
    expect(zoomed("week", "2027-01-18")).toMatchObject({
      from: "2027-01-18",
      to: "2027-01-24",
      earlier: "2027-01-11",
      later: "2027-01-25",
    });
    expect(zoomed("fortnight")).toMatchObject({ from: "2027-01-11", to: "2027-01-24" });
    expect(zoomed("all", "2027-02-15")).toMatchObject({ from: "2027-01-11", to: "2027-03-10", earlier: null, later: null });
    expect(zoomed("year").zoom).toBe("six weeks");
  });

  it("is today's week when nothing is placed", () => {
    expect(windowOf({ tasks: [], fittings: [] }, day("2027-01-13"), undefined).from).toBe("2027-01-11");
  });
});
