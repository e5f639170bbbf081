import { describe, expect, it } from "vitest";
import { dayNumber, plainDate } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { makerCalendar, workroomHours } from "./calendars";
import type { Absence, Maker, WeekHours } from "./workroom";

const date = (text: string) => text as PlainDate;
const monday = dayNumber(date("2027-02-01"));
const week = { from: monday, to: monday + 7 };
const weekdays = (from: number, to: number): WeekHours[] => [1, 2, 3, 4, 5].map((weekday) => ({ weekday, from, to }));

const maker = (changes: Partial<Maker> = {}): Maker => ({
  code: "bel",
  name: "Bel Orrin",
  trade: "tutu maker",
  employment: "staff",
  skills: { net: 1000 },
  hours: [...weekdays(540, 780), ...weekdays(840, 1080)],
  overtime: [],
  productive: 800,
  reservedMinutesPerWeek: 0,
  paceFrom: [],
  costPerHour: 2000,
  overtimeCostPerHour: 3000,
  starts: null,
  ends: null,
  ...changes,
});
const away = (changes: Partial<Absence>): Absence => ({
  maker: "bel",
  from: date("2027-02-02"),
  to: date("2027-02-02"),
  fromTime: null,
  toTime: null,
  reason: "",
  ...changes,
});
/** As `2027-02-01 540-780`. */
const shown = (intervals: readonly { start: number; end: number }[]) =>
  intervals.map(({ start, end }) => {
    const day = Math.floor(start / 1440);
    return `${plainDate(day)} ${start - day * 1440}-${end - day * 1440}`;
  });
const worked = (stretches: readonly { start: number; end: number }[]) => stretches.reduce((sum, one) => sum + one.end - one.start, 0);

describe("a maker's calendar", () => {
  it("has the hours of each weekday at the productive share", () => {
    const stretches = makerCalendar(maker(), [], week);
    expect(stretches).toHaveLength(10);
    expect(shown(stretches).slice(0, 2)).toEqual(["2027-02-01 540-780", "2027-02-01 840-1080"]);
    expect(stretches.every((one) => one.speed === 800 && !one.overtime)).toBe(true);
  });

  it("leaves out closed days, whole days away and parts of days", () => {
    const closed = away({ maker: null, from: date("2027-02-05"), to: date("2027-02-05") });
    const dentist = away({ from: date("2027-02-03"), to: date("2027-02-03"), fromTime: 540, toTime: 660 });
    const stretches = makerCalendar(maker(), [away({}), closed, dentist, away({ maker: "someone" })], week);
    expect(shown(stretches)).toEqual([
      "2027-02-01 540-780",
      "2027-02-01 840-1080",
      "2027-02-03 660-780",
      "2027-02-03 840-1080",
      "2027-02-04 540-780",
      "2027-02-04 840-1080",
    ]);
  });

  it("keeps reserved minutes back at the end of each week, over several stretches if need be", () => {
    const stretches = makerCalendar(maker({ reservedMinutesPerWeek: 300 }), [], week);
    expect(worked(stretches)).toBe(5 * 480 - 300);
    expect(shown(stretches).at(-1)).toBe("2027-02-05 540-720");
  });

  it("begins on her first day and ends after her last", () => {
    const stretches = makerCalendar(maker({ starts: date("2027-02-02"), ends: date("2027-02-03") }), [], week);
    expect(shown(stretches).map((text) => text.slice(0, 10))).toEqual(["2027-02-02", "2027-02-02", "2027-02-03", "2027-02-03"]);
  });

  it("takes the pace of the day: a newcomer's first week at half", () => {
    const newcomer = maker({
      paceFrom: [
        { date: date("2027-02-01"), pace: 500 },
        { date: date("2027-02-03"), pace: 1000 },
      ],
    });
    expect(makerCalendar(newcomer, [], week).map((one) => one.speed)).toEqual([400, 400, 400, 400, 800, 800, 800, 800, 800, 800]);
  });

  it("marks overtime and never counts an ordinary hour as overtime", () => {
    const stretches = makerCalendar(maker({ overtime: [{ weekday: 1, from: 1020, to: 1200 }] }), [], week);
    expect(shown(stretches.filter((one) => one.overtime))).toEqual(["2027-02-01 1080-1200"]);
  });
});

describe("the workroom's hours", () => {
  it("are those in which anybody has ordinary hours, on no closed day", () => {
    const early = maker({ code: "early", hours: [{ weekday: 1, from: 480, to: 600 }] });
    const hours = workroomHours(
      [maker(), early],
      [away({ maker: null }), away({ from: date("2027-02-03"), to: date("2027-02-03") })],
      week,
    );
    expect(shown(hours).slice(0, 3)).toEqual(["2027-02-01 480-780", "2027-02-01 840-1080", "2027-02-03 540-780"]);
  });
});
