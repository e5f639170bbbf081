import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayNumber } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { timelineAt } from "./timelineAt";
import { timelineDays } from "./timelineDays";

const first = dayNumber("2027-02-01" as PlainDate);
const hours = { from: 540, to: 1080 };
const axis = timelineDays({
  first,
  last: first + 13,
  weekdays: new Set([1, 2, 3, 4, 5]),
  closed: () => null,
  ...hours,
  left: 196,
  width: 1200,
});
const grip = { days: axis.days, dayWidth: axis.dayWidth, ...hours };

describe("a place on the timeline", () => {
  it("means the quarter hour that is drawn there", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: 35 }), (day, quarter) => {
        const { date } = axis.days[day]!;
        const at = hours.from + quarter * 15;
        expect(timelineAt(grip, axis.xOf(dayNumber(date) * 1440 + at))).toEqual({ date, at });
      }),
    );
  });

  it("outside the picture means the first and the last time drawn", () => {
    expect(timelineAt(grip, -50)).toEqual({ date: "2027-02-01", at: 540 });
    expect(timelineAt(grip, 9999)).toEqual({ date: "2027-02-12", at: 1065 });
  });
});
