import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayNumber, plainDate, weekdayOf } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { shiftDates } from "./shiftDates";
import type { Staging } from "./staging";

const day = (text: string) => text as PlainDate;

const empty = {
  ...{ sizeGroups: [], performers: [], roles: [], casting: [], scenes: [], appearances: [], costumes: [], pieces: [] },
  ...{ machines: [], materials: [], offers: [], stock: [], constructions: [] },
};

const staging = (starts: PlainDate, date: PlainDate): Staging => ({
  ...empty,
  production: {
    ...{ code: "p", title: "P", subtitle: "", workroom: "w", starts, budget: null, currency: "GBP", zone: "Europe/London" },
    ...{ words: "uk", lengths: "in", prefix: "P", visitsPerWeek: null },
  },
  milestones: [{ code: "opening", kind: "opening", name: "Opening", date, at: 0 }],
  measurements: [{ of: { sizeGroup: "M" }, taken: date, body: "cold", values: {} }],
  sets: [{ code: "s", name: "S", oneDyeLot: false, repair: 0, prototype: true, freeUntil: null, approvalDays: 1, approvedOn: date }],
  makers: [
    {
      ...{ code: "m", name: "M", trade: "cutter", employment: "staff", skills: {}, hours: [], overtime: [], productive: 1000 },
      ...{ reservedMinutesPerWeek: 0, paceFrom: [{ date, pace: 500 }], costPerHour: 0, overtimeCostPerHour: 0, starts: date, ends: null },
    },
  ],
  absences: [{ maker: null, from: date, to: date, fromTime: null, toTime: null, reason: "" }],
  calls: [{ performer: null, date, from: 0, to: 1, kind: "class" }],
  lots: [{ code: "l", material: "m", dyeLot: "", quantity: 0, location: "", breadth: null, arrives: date }],
  approvals: [
    {
      ...{ code: "a", title: "A", by: "designer", days: 1, set: "s", freeUntil: null, material: null },
      ...{ askedOn: date, expectedOn: date, approvedOn: date },
    },
  ],
  otherWork: [
    {
      ...{ code: "o", origin: "by hand", title: "O", garment: null, set: null, material: null, gates: null, skill: "hand" },
      ...{ minutes: [1, 1, 1], machine: null, priority: 2, due: null, waitsFor: null, shownFor: null, askedBy: "" },
      ...{ askedOn: date, doneOn: date },
    },
  ],
});

/** Every date of a staging, by finding what looks like one. */
const dates = (value: Staging): PlainDate[] => (JSON.stringify(value).match(/\d{4}-\d{2}-\d{2}/g) ?? []) as PlainDate[];

const anyDay = fc.integer({ min: dayNumber(day("2000-01-01")), max: dayNumber(day("2100-01-01")) }).map(plainDate);

describe("a staging moved to today", () => {
  it("that starts on a Monday starts on the Monday on or after today", () => {
    const starts = (today: string) => shiftDates(staging(day("2027-01-18"), day("2027-03-05")), day(today)).production.starts;
    expect(starts("2026-11-23")).toBe("2026-11-23");
    expect(starts("2026-11-24")).toBe("2026-11-30");
    expect(starts("2026-11-29")).toBe("2026-11-30");
    expect(starts("2031-07-01")).toBe("2031-07-07");
  });

  it("that starts later in a week starts later in that week", () => {
    const moved = shiftDates(staging(day("2027-01-20"), day("2027-03-05")), day("2026-11-24"));
    expect(moved.production.starts).toBe("2026-12-02");
    expect(moved.milestones[0].date).toBe("2027-01-15");
  });

  it("has every date moved by the same whole weeks", () => {
    void fc.assert(
      fc.property(anyDay, anyDay, anyDay, (starts, date, today) => {
        const before = staging(starts, date);
        const after = shiftDates(before, today);
        const moves = dates(after).map((moved, at) => dayNumber(moved) - dayNumber(dates(before)[at]));
        expect(new Set(moves).size).toBe(1);
        expect(Math.abs(moves[0] % 7)).toBe(0);
        const monday = dayNumber(after.production.starts) - weekdayOf(dayNumber(after.production.starts)) + 1;
        expect(monday).toBeGreaterThanOrEqual(dayNumber(today));
        expect(monday).toBeLessThan(dayNumber(today) + 7);
      }),
    );
  });
});
