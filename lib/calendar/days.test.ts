import fc from "fast-check";
import { Temporal } from "temporal-polyfill";
import { describe, expect, it } from "vitest";
import { addDays, dateOf, dayNumber, isoDate, mondayOf, plainDate, weekdayOf } from "./days";
import type { PlainDate } from "./plainDate";
import { addWorkingDays, workingDaysAfter } from "./workingDays";

/** Every day from 0001-01-01 to 9999-12-31. */
const anyDay = fc.integer({ min: -719162, max: 2932896 });
const epoch = Temporal.PlainDate.from("1970-01-01");

describe("calendar days", () => {
  it("agree with Temporal in date, weekday and back", () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        const theirs = epoch.add({ days: day });
        expect(plainDate(day)).toBe(theirs.toString());
        expect(weekdayOf(day)).toBe(theirs.dayOfWeek);
        expect(dayNumber(plainDate(day))).toBe(day);
      }),
      { numRuns: 500 },
    );
  });

  it("know which days there are", () => {
    expect(dateOf(2028, 2, 29)).toBe("2028-02-29");
    expect(dateOf(2027, 2, 29)).toBeNull();
    expect(dateOf(1900, 2, 29)).toBeNull();
    expect(isoDate("2027-13-01")).toBeNull();
    expect(isoDate("2027-3-1")).toBeNull();
  });

  it("find the Monday on or before a day", () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        expect(weekdayOf(mondayOf(day))).toBe(1);
        expect(day - mondayOf(day)).toBe(weekdayOf(day) - 1);
      }),
    );
  });

  it("add across months and years", () => expect(addDays("2026-12-31" as PlainDate, 60)).toBe("2027-03-01"));
});

describe("working days", () => {
  const weekdays = (day: number) => weekdayOf(day) <= 5;
  const friday = dayNumber("2027-03-05" as PlainDate);

  it("step over closed days both ways", () => {
    expect(plainDate(addWorkingDays(friday, 1, weekdays) ?? 0)).toBe("2027-03-08");
    expect(plainDate(addWorkingDays(friday, -5, weekdays) ?? 0)).toBe("2027-02-26");
    expect(addWorkingDays(friday, 1, () => false)).toBeNull();
  });

  it("counted after adding give what was added", () => {
    fc.assert(
      fc.property(anyDay, fc.nat(40), (day, count) => {
        expect(workingDaysAfter(day, addWorkingDays(day, count, weekdays) ?? Number.NaN, weekdays)).toBe(count);
      }),
    );
  });
});
