import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, weekdayOf } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { tape } from "./tape";

const day = (text: string) => text as PlainDate;
const weekdays = (number: number) => weekdayOf(number) <= 5;
const size = { width: 1392, letters: 15 };
const parade = { name: "Dress parade", date: day("2027-04-14") };
const opening = { name: "Opening", date: day("2027-04-24") };

describe("tape", () => {
  it("counts working days down to opening, which has a unit even on a Saturday", () => {
    const { days, unit } = tape(day("2027-03-09"), opening.date, weekdays, [], size);
    expect(days.map((one) => one.left)).toEqual(Array.from({ length: days.length }, (_, at) => days.length - 1 - at));
    // Tue 9 March to Fri 23 April 2027 are 34 weekdays; opening is one unit more.
    expect(days).toHaveLength(35);
    expect(unit * 35).toBeCloseTo(1392);
    expect(days.filter((one) => one.startsWeek).map((one) => one.date)).toEqual(
      ["2027-03-15", "2027-03-22", "2027-03-29", "2027-04-05", "2027-04-12", "2027-04-19"].map(day),
    );
    expect(days.at(-1)).toMatchObject({ date: "2027-04-24", left: 0 });
  });

  it("pins a milestone in the middle of its day, or where the next begins when the day is closed", () => {
    const { pins, unit } = tape(
      day("2027-04-12"),
      opening.date,
      weekdays,
      [opening, parade, { name: "Get-in", date: day("2027-04-18") }],
      size,
    );
    expect(pins.map((pin) => [pin.name, pin.small, pin.days, pin.x / unit])).toEqual([
      ["Dress parade", "Wed 14 Apr, 2 days", 2, 2.5],
      ["Get-in", "Sun 18 Apr, 5 days", 5, 5],
      ["Opening", "Sat 24 Apr, 10 days", 10, 10.5],
    ]);
  });

  it("leaves out what is past, and is empty after opening", () => {
    expect(tape(day("2027-04-20"), opening.date, weekdays, [parade, opening], size).pins.map((pin) => pin.name)).toEqual(["Opening"]);
    expect(tape(day("2027-04-25"), opening.date, weekdays, [opening], size)).toEqual({ unit: 0, days: [], pins: [] });
  });

  const labels = (milestones: readonly { name: string; date: PlainDate }[], width = 1392) =>
    tape(day("2027-03-09"), opening.date, weekdays, milestones, { ...size, width }).pins.map((pin) => [
      pin.name,
      pin.label,
      pin.both,
      pin.tier,
    ]);

  it("sets a name left of its pin, right at the edge, and above where neighbours are near", () => {
    const near = [
      { name: "Measuring", date: day("2027-03-09") },
      parade,
      { name: "Get-in", date: day("2027-04-15") },
      { name: "Portraits", date: day("2027-04-16") },
      opening,
    ];
    expect(labels(near)).toEqual([
      ["Measuring", "right", true, 0],
      ["Dress parade", "left", true, 0],
      ["Get-in", "left", true, 1],
      ["Portraits", "right", true, 0],
      ["Opening", "left", true, 1],
    ]);
  });

  it("drops the smaller line, then the name, before either would cross another pin", () => {
    const crowd = ["A parade", "Photographs", "A speech"].map((name) => ({ name, date: parade.date }));
    expect(labels([parade, ...crowd], 700)).toEqual([
      ["Dress parade", "left", true, 0],
      ["A parade", "left", true, 1],
      ["Photographs", null, false, 0],
      ["A speech", null, false, 0],
    ]);
  });

  it("every pin lies on the tape, in the order of dates", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -20, max: 80 }), { maxLength: 8 }), fc.integer({ min: 0, max: 60 }), (offsets, length) => {
        const today = day("2027-03-09");
        const end = addDays(today, length);
        const { pins } = tape(
          today,
          end,
          weekdays,
          offsets.map((offset, at) => ({ name: `m${at}`, date: addDays(today, offset) })),
          size,
        );
        expect(pins).toHaveLength(offsets.filter((offset) => offset >= 0 && offset <= length).length);
        for (const [at, pin] of pins.entries()) {
          expect(pin.x).toBeGreaterThanOrEqual(pins[at - 1]?.x ?? 0);
          expect(pin.x).toBeLessThanOrEqual(size.width);
        }
      }),
    );
  });
});
