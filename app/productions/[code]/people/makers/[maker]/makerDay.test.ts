import { describe, expect, it } from "vitest";
import { wallMinute } from "#lib/calendar/clock";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { PlannedFitting, PlannedTask, StagingPlan } from "#lib/planning/stagingPlan";
import { makerDay, weekOf } from "./makerDay";

const day = (text: string) => text as PlainDate;
const at = (date: string, hour: number) => wallMinute(day(date), hour * 60);

const cut = {
  ...{ key: "MG 001/cut", name: "Cut", garments: ["MG 001"], maker: "orla", start: at("2027-02-01", 16), end: at("2027-02-02", 11) },
  stretches: [
    { start: at("2027-02-01", 16), end: at("2027-02-01", 18) },
    { start: at("2027-02-02", 9), end: at("2027-02-02", 11) },
  ],
} as unknown as PlannedTask;
const fitting = {
  ...{ garment: "MG 002", fitting: "first", name: "First fitting", performer: "ines", fitter: "orla", room: "room" },
  ...{ start: at("2027-02-02", 8), end: at("2027-02-02", 9) },
} as unknown as PlannedFitting;
const plan = {
  tasks: [cut, { ...cut, key: "other", maker: "bryn" }],
  fittings: [fitting, { ...fitting, fitter: "bryn" }],
} as unknown as StagingPlan;

describe("a maker's day", () => {
  it("holds the stretches of their tasks and the fittings they hold, in order of time", () => {
    expect(makerDay(plan, "orla", day("2027-02-02")).map(({ kind, key, from, to }) => [kind, key, from, to])).toEqual([
      ["fitting", "MG 002/first", "08:00", "09:00"],
      ["task", "MG 001/cut", "09:00", "11:00"],
    ]);
    expect(makerDay(plan, "orla", day("2027-02-03"))).toEqual([]);
  });

  it("says of a task how much of it is done that day, and whether it goes on", () => {
    const [first] = makerDay(plan, "orla", day("2027-02-01"));
    expect(first).toMatchObject({ minutes: 120, whole: 240, goesOn: { before: false, after: true } });
    expect(makerDay(plan, "orla", day("2027-02-02"))[1]).toMatchObject({ goesOn: { before: true, after: false } });
  });

  it("lies in the week from Monday to Sunday", () => {
    expect(weekOf(day("2027-02-03"))).toEqual([1, 2, 3, 4, 5, 6, 7].map((number) => `2027-02-0${number}`));
  });
});
