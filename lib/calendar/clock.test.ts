import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readClock, showClock, splitWall, wallMinute } from "./clock";
import { plainDate } from "./days";
import type { PlainDate } from "./plainDate";
import { showDay, showWall } from "./showDay";
import { readWeekHours, showWeekHours } from "./weekHours";

describe("clock", () => {
  it("reads times as people write them", () => {
    const read = (text: string) => readClock(text);
    expect(["09:30", "9:30", "9.30", "9:30 am", "1:15 pm", "12 am", "12 pm", "24:00"].map(read)).toEqual(
      [570, 570, 570, 570, 795, 0, 720, 1440].map((value) => ({ ok: true, value })),
    );
    for (const text of ["", "9", "25:00", "24:01", "13 pm", "9:75", "noon"]) expect(readClock(text).ok).toBe(false);
  });

  it("reads back every minute it shows", () => {
    fc.assert(
      fc.property(fc.nat(1440), (minute) => {
        expect(readClock(showClock(minute))).toEqual({ ok: true, value: minute });
      }),
    );
  });

  it("splits a wall minute into what it was made of", () => {
    fc.assert(
      fc.property(fc.integer({ min: -9000, max: 90000 }), fc.nat(1439), (day, minute) => {
        expect(splitWall(wallMinute(plainDate(day), minute))).toEqual({ date: plainDate(day), minute });
      }),
    );
  });

  it("shows days without a zone", () => {
    expect(showDay("2027-03-09" as PlainDate)).toBe("Tue 9 Mar");
    expect(showWall(wallMinute("2027-04-15" as PlainDate, 765))).toBe("Thu 15 Apr 12:45");
  });
});

describe("hours of a week", () => {
  const text = "Mon-Fri 09:00-13:00 14:00-18:00; Sat 09:00-13:00";

  it("reads and shows the same text", () => {
    const read = readWeekHours(text);
    expect(read.ok && read.value.length).toBe(11);
    expect(read.ok && read.value[0]).toEqual({ weekday: 1, from: 540, to: 780 });
    expect(read.ok && showWeekHours(read.value)).toBe(text);
    expect(readWeekHours("")).toEqual({ ok: true, value: [] });
  });

  it("reads other ways of writing them", () => {
    const read = readWeekHours("Monday – Tuesday 9am-1pm, 2pm-6pm; Thu, Sat 09:00–12:00");
    expect(read.ok && showWeekHours(read.value)).toBe("Mon-Tue 09:00-13:00 14:00-18:00; Thu 09:00-12:00; Sat 09:00-12:00");
  });

  it.each(["Mon", "09:00-13:00", "Mon 13:00-09:00", "Fri-Mon 09:00-13:00", "Mon 09:00-13:00 12:00-14:00", "Mon 09:00", "Moon 09:00-10:00"])(
    "refuses %j",
    (bad) => expect(readWeekHours(bad).ok).toBe(false),
  );
});
