import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { dayNumber } from "#lib/calendar/days";
import { clashes } from "#lib/casting/clashes";
import { garmentsOf } from "#lib/casting/garments";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { Staging } from "#lib/staging/staging";
import { FOLDER, madeFiles } from "./company/make";
import { takenUp } from "./company/takenUp";
import { planned, seedStaging } from "./plannedFolder";

let staging: Staging;
let plain: StagingPlan;
let searched: StagingPlan;
beforeAll(async () => {
  staging = await seedStaging("company");
  plain = await planned("company", 0);
  searched = await planned("company", 3);
}, 120_000);

const late = ({ garmentStates }: StagingPlan) => garmentStates.filter(({ minutesLate }) => minutesLate > 0).map(({ garment }) => garment);
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const trade = (name: string) => staging.makers.filter((maker) => maker.trade.includes(name)).map(({ code }) => code);

describe("the company's staging", () => {
  it("is made again from its short tables to the letter", () => {
    for (const [file, text] of madeFiles()) expect(readFileSync(`${FOLDER}/${file}`, "utf8"), file).toBe(text);
  });

  it("has 54 performers in two casts with covers, 20 roles and three acts, and nobody in two places at once", () => {
    expect(staging.performers.length).toBe(54);
    expect(staging.roles.length).toBe(20);
    expect(new Set(staging.scenes.map(({ act }) => act))).toEqual(new Set([1, 2, 3]));
    const standing = (cast: string, as: string) => staging.casting.filter((row) => row.cast === cast && row.standing === as).length;
    expect([standing("first", "cast"), standing("second", "cast"), standing("first", "cover")]).toEqual([85, 15, 29]);
    expect(clashes(staging)).toEqual([]);
  });

  it("calls every performer by name", () => {
    const called = new Set(staging.calls.map(({ performer }) => performer));
    expect(staging.performers.filter(({ code }) => !called.has(code))).toEqual([]);
  });

  it("has 270 garments of 24 kinds, two in five of them not built, and 19 new classical tutus", () => {
    const garments = garmentsOf(staging);
    const from = (source: string) => garments.filter((garment) => garment.source === source).length;
    expect(garments.length).toBe(270);
    expect(new Set(garments.map(({ construction }) => construction)).size).toBe(24);
    expect(["build", "pull", "alter", "hire", "buy"].map(from)).toEqual([150, 13, 30, 19, 58]);
    expect(garments.filter(({ source, construction }) => source === "build" && construction === "classical-tutu").length).toBe(19);
    expect(garments.filter(({ set }) => set !== null).length).toBe(139);
  });

  it("has nine makers of uneven skill, two of them tutu makers, one fitting room, and fourteen weeks to dress", () => {
    expect(staging.makers.length).toBe(9);
    expect([trade("cutter"), trade("tutu maker")]).toEqual([
      ["maud", "tobiah"],
      ["isolde", "pia"],
    ]);
    expect(staging.machines.filter(({ kind }) => kind === "fitting room").map(({ count }) => count)).toEqual([1]);
    const dress = staging.milestones.find(({ kind }) => kind === "dress rehearsal")!;
    expect(dayNumber(dress.date) - dayNumber(staging.production.starts)).toBe(14 * 7);
  });

  it("can buy all it needs, some of it after weeks, and has stock and lots on the shelf", () => {
    expect(plain.notes.filter(({ kind }) => kind === "material" || kind === "measurement" || kind === "parameter")).toEqual([]);
    expect(Math.max(...staging.offers.map(({ leadDays }) => leadDays))).toBe(14);
    expect([staging.stock.length, staging.lots.length]).toEqual([9, 16]);
  });
});

describe("the hours of the company's staging", () => {
  it("are what nine makers have in fourteen weeks of forty hours at three quarters, with room for the fittings", () => {
    const hours = sum(plain.tasks.map(({ minutes }) => minutes)) / 60;
    const fittings = sum(plain.fittings.map(({ minutes }) => minutes)) / 60;
    expect(hours).toBeGreaterThan(2500);
    expect(hours + fittings).toBeLessThan(9 * 40 * 14 * 0.75);
  });

  it("shared out over the garments come to those of the tasks", () => {
    expect(sum(plain.garmentStates.map(({ minutes }) => minutes))).toBe(sum(plain.tasks.map(({ minutes }) => minutes)));
  });

  it("take up nine tenths of the cutters' and of the tutu makers' time until the dress parade, and less of the others'", () => {
    const others = staging.makers
      .map(({ code }) => code)
      .filter((code) => !trade("cutter").includes(code) && !trade("tutu maker").includes(code));
    expect(takenUp(searched, trade("cutter"))).toBeGreaterThanOrEqual(0.9);
    expect(takenUp(searched, trade("tutu maker"))).toBeGreaterThanOrEqual(0.9);
    expect(takenUp(searched, others)).toBeLessThan(0.9);
  });
});

describe("the plan of the company's staging", () => {
  it("leaves at least five garments late by the plain rule, each with its reasons", () => {
    expect(late(plain).length).toBeGreaterThanOrEqual(5);
    for (const { minutesLate, why } of plain.garmentStates) expect(why.length > 0).toBe(minutesLate > 0);
    expect(plain.answer.plan.unplaced).toEqual([]);
  });

  it("leaves nothing late after three rounds of search, and nobody works overtime", () => {
    expect(late(searched)).toEqual([]);
    expect(searched.answer.plan.unplaced).toEqual([]);
    expect(searched.summary.overtimeMinutes).toBe(0);
  });
});
