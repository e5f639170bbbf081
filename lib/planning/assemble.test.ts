import { describe, expect, it } from "vitest";
import { level } from "#lib/levelling/level";
import type { Staging } from "#lib/staging/staging";
import { assemble } from "./assemble";
import { day, fitting, garment, maker, operation, staging, wall, work } from "./fixtures";
import { prepareWorks } from "./prepare";

const after = (on: string, lagMinutes = 0) => ({ on, lagMinutes, lagKind: "elapsed" as const });
const skirt = work(
  "X 1",
  [
    operation("cut", { minutes: [1, 100, 200], name: { uk: "Cut", us: "Cut" } }),
    operation("sew", { minutes: [1, 240, 300], waitsFor: [after("cut")] }),
    operation("hem", { minutes: [1, 60, 90], waitsFor: [after("try"), after("sew", 1440)] }),
  ],
  [fitting("try", { waitsFor: [after("sew")] })],
);
const plan = (changes: Partial<Staging> = {}) => {
  const prepared = prepareWorks(staging(changes), [garment("X 1")], [skirt], { today: day("2027-02-01") });
  return assemble(prepared, level(prepared.problem, { seed: 1, rounds: 0, stop: () => false }));
};
const parade = (date: string, at: number) => ({
  milestones: [
    { code: "parade", kind: "dress parade" as const, name: "Dress parade", date: day(date), at },
    { code: "opening", kind: "opening" as const, name: "Opening", date: day("2027-02-19"), at: 1170 },
  ],
});

describe("a plan in the words of the wardrobe", () => {
  // One maker from 09:00 to 17:00: cut 100 min, sew 240, a fitting of 30 on the next quarter, and the hem a day after the sewing.
  const made = plan();

  it("tells who does what and when, on the wall clock", () => {
    expect(made.tasks.map(({ key, maker: who, start, end }) => [key, who, start, end])).toEqual([
      ["X 1/cut", "bel", wall("2027-02-01", 540), wall("2027-02-01", 640)],
      ["X 1/sew", "bel", wall("2027-02-01", 640), wall("2027-02-01", 880)],
      ["X 1/hem", "bel", wall("2027-02-02", 880), wall("2027-02-02", 940)],
    ]);
  });

  it("tells who is fitted where, and numbers the visits", () => {
    expect(made.fittings).toEqual([
      expect.objectContaining({
        performer: "mira",
        fitter: "bel",
        room: "room",
        visit: 1,
        start: wall("2027-02-01", 885),
        end: wall("2027-02-01", 915),
      }),
    ]);
  });

  it("adds up minutes, load and cost: 100 + 240 + 60 + 30 = 430 min at 20.00 an hour", () => {
    expect(made.garmentStates[0]).toMatchObject({ minutes: 400, minutesLate: 0, daysLate: 0, why: [] });
    expect(made.summary).toMatchObject({ minutesBySkill: { net: 400, fit: 30 }, labourCost: 14333, lateGarments: 0, tasks: 3, visits: 1 });
    expect(made.load.filter(({ by }) => by === "maker")).toEqual([
      { by: "maker", code: "bel", week: "2027-02-01", planned: 430, free: 2400, over: 0 },
    ]);
  });

  it("shares a maker's free time out over her skills by need", () => {
    expect(made.load.filter(({ by }) => by === "skill").map(({ code, planned, free }) => [code, planned, free])).toEqual([
      ["net", 400, Math.round((2400 * 400) / 430)],
      ["fit", 30, Math.round((2400 * 30) / 430)],
    ]);
  });

  it("counts lateness by the clock and in working days, and says why", () => {
    const late = plan(parade("2027-02-02", 600)).garmentStates[0]!;
    expect([late.minutesLate, late.daysLate]).toEqual([340, 0]);
    const later = plan(parade("2027-02-01", 600));
    expect([later.garmentStates[0]!.minutesLate, later.garmentStates[0]!.daysLate]).toEqual([1780, 1]);
    expect(later.notes).toEqual([
      expect.objectContaining({ kind: "late", about: "X 1", text: expect.stringContaining("1 working day late.") }),
    ]);
  });

  it("tiles the way from release to finish with links", () => {
    const { links, finish } = plan(parade("2027-02-01", 600)).garmentStates[0]!;
    expect(links[0]!.start).toBe(wall("2027-02-01", 0));
    expect(links.at(-1)!.end).toBe(finish);
    for (let at = 1; at < links.length; at++) expect(links[at]!.start).toBe(links[at - 1]!.end);
  });

  it("names the absence that keeps a garment waiting, and is in time without it", () => {
    // The hem is ready on Tuesday at 14:40: 2 h 20 of that day and eight days of eight hours are lost.
    const absences = [{ maker: "bel", from: day("2027-02-02"), to: day("2027-02-12"), fromTime: null, toTime: null, reason: "leave" }];
    const [late] = plan({ absences }).garmentStates;
    expect(late!.minutesLate).toBeGreaterThan(0);
    expect(late!.why[0]).toBe("Waits 66 h 20: bel (tutu maker) is away Tue 2 Feb to Fri 12 Feb (leave).");
    expect(plan().garmentStates[0]!.minutesLate).toBe(0);
  });

  it("notes work nobody can do and plans the rest", () => {
    const without = plan({ makers: [maker("bel", { skills: { net: 1000 } })] });
    expect(without.garmentStates[0]).toMatchObject({ finish: null, minutesLate: 0 });
    expect(without.tasks.map(({ start }) => start !== null)).toEqual([true, true, false]);
    expect(without.notes.filter(({ kind }) => kind === "unplaced").map(({ about }) => about)).toContain("X 1 try fitting");
  });
});
