import { beforeAll, describe, expect, it } from "vitest";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { LENGTH_PER_INCH, LENGTH_PER_YARD } from "#lib/units/quantities";
import { planned } from "./plannedFolder";

/** Every literal here is worked by hand in seed/README.md. */
let plain: StagingPlan;
let searched: StagingPlan;
beforeAll(async () => {
  plain = await planned("small", 0);
  searched = await planned("small", 10);
});

const work = (garment: string) => plain.works.find((one) => one.garment === garment)!;
const minutes = (garment: string) => Object.fromEntries(work(garment).operations.map(({ code, minutes: [, likely] }) => [code, likely]));
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const need = (garment: string, role: string) => work(garment).needs.find((one) => one.role === role)!;
const late = ({ garmentStates }: StagingPlan) => garmentStates.filter(({ minutesLate }) => minutesLate > 0);

describe("the hours of the small staging", () => {
  it("of the first Lark tutu are those worked by hand", () => {
    expect(minutes("WL 001")).toEqual({
      pattern: 180,
      toile: 180,
      "cut-net": 240,
      gather: 480,
      knickers: 240,
      mount: 479,
      close: 132,
      steam: 90,
      tack: 240,
      bodice: 360,
      bones: 361,
      decorate: 1140,
      join: 210,
      hooks: 248,
      press: 60,
    });
  });

  it("of the second are less where repeating teaches", () => {
    expect(minutes("WL 002")).toMatchObject({ pattern: 162, gather: 456, decorate: 1026, mount: 419 });
  });

  it("come to 21,996 min, and to 21,415 with the set-ups that batches share", () => {
    const all = plain.works.map(({ operations }) => sum(operations.map(({ minutes: [, likely] }) => likely)));
    expect(all).toEqual([4640, 4308, 2043, 1942, 1905, 1202, 2483, 2483, 346, 606, 19, 19]);
    expect(sum(all)).toBe(21_996);
    expect(sum(plain.tasks.map((task) => task.minutes))).toBe(21_415);
    expect(sum(plain.garmentStates.map((state) => state.minutes))).toBe(21_415);
    expect(plain.tasks.find(({ key }) => key === "WL-001+1/gather")).toMatchObject({ garments: ["WL 001", "WL 002"], minutes: 907 });
  });
});

describe("the net of the small staging", () => {
  it("of a Lark tutu comes to 547 9/11 in off the roll and 90 yd of strip", () => {
    const { layers } = work("WL 001");
    expect(layers.map(({ widths }) => widths)).toEqual([4, 4, 4, 4, 5, 5, 5, 5, 6, 6, 6, 6]);
    expect(sum(layers.map(({ strip }) => strip))).toBe(90 * LENGTH_PER_YARD);
    // Each depth is rounded to an eightieth of a millimetre, and cut up to six times.
    expect(Math.abs(need("WL 001", "net").quantity - (547 + 9 / 11) * LENGTH_PER_INCH)).toBeLessThan(30);
  });

  it("of a Snowflake comes to 23 rows as deep as its dancer needs", () => {
    for (const [garment, yards] of [
      ["WL 003", 17.4],
      ["WL 004", 15.64],
      ["WL 005", 17.9],
    ] as const)
      expect(need(garment, "net").quantity / LENGTH_PER_YARD).toBeCloseTo(yards, 2);
  });
});

describe("the purchase list of the small staging", () => {
  const line = (material: string) => plain.purchase.lines.find((one) => one.material === material)!;

  it("buys net, hooks and bones as worked by hand", () => {
    expect(line("net-stiff-white")).toMatchObject({ packs: 2, pricePerPack: 5800, cost: 11_600, oneLotSet: "larks" });
    expect(line("net-stiff-white").toBuy / LENGTH_PER_YARD).toBeCloseTo(33.48, 2);
    expect(line("net-soft-white")).toMatchObject({ packs: 3, cost: 14_700, oneLotSet: "flakes" });
    expect(line("net-soft-white").toBuy / LENGTH_PER_YARD).toBeCloseTo(56.03, 2);
    expect(line("hook-3")).toMatchObject({ gross: 132, spare: 14, toBuy: 86, packs: 1, cost: 640 });
    expect(line("hook-3").fromShelf).toEqual([{ lot: "H-1", quantity: 60 }]);
    expect(line("spiral-bone")).toMatchObject({ packs: 3, cost: 7200 });
    expect(line("spiral-bone").gross / LENGTH_PER_YARD).toBeCloseTo(26.74, 2);
  });

  it("orders in time for the plan", () => {
    for (const { neededBy, orderBy } of searched.purchase.lines) {
      expect(neededBy).not.toBeNull();
      expect(orderBy! >= "2027-01-11").toBe(true);
    }
  });
});

describe("the plan of the small staging", () => {
  it("leaves both Lark tutus two working days late by the plain rule", () => {
    expect(late(plain).map(({ garment, daysLate }) => [garment, daysLate])).toEqual([
      ["WL 001", 2],
      ["WL 002", 2],
    ]);
    expect(plain.answer.rounds).toBe(0);
  });

  it("leaves nothing late after ten rounds of search, whatever the seed, without overtime", async () => {
    for (const plan of [searched, await planned("small", 10, 2), await planned("small", 10, 3)]) {
      expect(late(plan)).toEqual([]);
      expect(plan.answer.plan.unplaced).toEqual([]);
      expect(plan.summary.overtimeMinutes).toBe(0);
      expect(plan.garmentStates.every(({ finish }) => finish !== null)).toBe(true);
    }
  });

  it("fits several garments in one visit where nothing is late for it", () => {
    expect(plain.answer.measures.visits).toBe(42);
    expect(searched.answer.measures.visits).toBeLessThan(42);
    expect(searched.answer.plan.visits.flatMap(({ fittings }) => fittings)).toHaveLength(42);
  });

  it("shares every week's free hours out whole: those of the skills add up to those of the makers", () => {
    const weeks = new Set(searched.load.map(({ week }) => week));
    for (const week of weeks) {
      const free = (kind: string) =>
        searched.load.filter((cell) => cell.by === kind && cell.week === week).reduce((sum, cell) => sum + cell.free, 0);
      // Each cell is rounded to a minute once.
      expect(Math.abs(free("skill") - free("maker"))).toBeLessThanOrEqual(searched.load.length / weeks.size);
    }
  });

  it("loads nobody beyond the hours there are", () => {
    for (const { planned: minutesPlanned, free, by } of searched.load) if (by === "maker") expect(minutesPlanned).toBeLessThanOrEqual(free);
  });

  it("notes the measurement that was never taken", () => {
    expect(plain.notes.filter(({ kind }) => kind === "measurement").map(({ about }) => about)).toEqual(["WL 008"]);
  });
});
