import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayNumber } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { elapsedBetween } from "#lib/calendar/zone";
import { makeAxis, toAxis, toWall } from "./axis";

const day = (text: string) => dayNumber(text as PlainDate);
/** London puts its clocks forward at 01:00 on 28 March 2027 and back at 02:00 on 31 October 2027 (last Sundays of March and October). */
const spring = makeAxis(day("2027-03-22"), day("2027-04-05"), "Europe/London");
const autumn = makeAxis(day("2027-10-25"), day("2027-11-08"), "Europe/London");
const wall = (text: string, minute: number) => day(text) * 1440 + minute;

describe("the engine's axis", () => {
  it("is the wall clock where no clock changes", () => {
    const axis = makeAxis(day("2027-02-01"), day("2027-03-01"), "Europe/London");
    expect(axis.changes).toEqual([]);
    expect(toAxis(axis, wall("2027-02-03", 615))).toBe(2 * 1440 + 615);
  });

  it("counts a night of 23 hours as 23 hours and one of 25 as 25", () => {
    const night = (axis: typeof spring, from: string, to: string) => toAxis(axis, wall(to, 540)) - toAxis(axis, wall(from, 540));
    expect(night(spring, "2027-03-27", "2027-03-28")).toBe(23 * 60);
    expect(night(autumn, "2027-10-30", "2027-10-31")).toBe(25 * 60);
    expect(night(spring, "2027-03-28", "2027-03-29")).toBe(24 * 60);
  });

  it("puts a hem hung for 24 hours on Saturday at 12:00 down on Sunday at 13:00 in spring and 11:00 in autumn", () => {
    expect(toWall(spring, toAxis(spring, wall("2027-03-27", 720)) + 1440)).toBe(wall("2027-03-28", 780));
    expect(toWall(autumn, toAxis(autumn, wall("2027-10-30", 720)) + 1440)).toBe(wall("2027-10-31", 660));
  });

  it("takes a time the clock skips for the jump, and one it shows twice for the first", () => {
    expect(toAxis(spring, wall("2027-03-28", 90))).toBe(6 * 1440 + 60);
    expect(toAxis(autumn, wall("2027-10-31", 90))).toBe(6 * 1440 + 90);
    expect(toWall(autumn, 6 * 1440 + 90)).toBe(toWall(autumn, 6 * 1440 + 90 + 60));
  });

  it("leads back to the same time, for every time that exists", () => {
    for (const [axis, zero] of [
      [spring, "2027-03-22"],
      [autumn, "2027-10-25"],
    ] as const)
      fc.assert(
        fc.property(fc.integer({ min: 0, max: 13 * 1440 }), (minute) => {
          const time = wall(zero, minute);
          fc.pre(axis === autumn || minute < 6 * 1440 + 60 || minute >= 6 * 1440 + 120);
          expect(toAxis(axis, time)).toBe(elapsedBetween(wall(zero, 0), time, "Europe/London"));
          expect(toWall(axis, toAxis(axis, time))).toBe(time);
        }),
      );
  });
});
