import { describe, expect, it } from "vitest";
import { breakDown } from "#lib/breakdown/breakDown";
import { wallMinute } from "#lib/calendar/clock";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { Recast } from "#lib/casting/castCell";
import { garmentsOf } from "#lib/casting/garments";
import { recast } from "#lib/casting/recast";
import type { Construction } from "#lib/constructions/construction";
import { DEFAULT_RULES } from "#lib/fittings/rules";
import type { PlannedFitting } from "#lib/planning/stagingPlan";
import { smallStaging } from "#lib/staging/fixtures";
import type { Staging } from "#lib/staging/staging";
import { castingEffect } from "./castingEffect";
import { fittingMoves } from "./fittingMoves";

/** The small staging, its skirt fitted once, its net by the hip, and an alteration of an hour and a half. */
const staging: Staging = (() => {
  const small = smallStaging();
  const [skirt] = small.constructions as readonly [Construction];
  const alter = {
    ...skirt.operations[1]!,
    code: "alter",
    setupMinutes: [60, 90, 120],
    rates: [],
    waitsFor: [],
    sources: ["alter"],
  } as const;
  const fitting = {
    code: "first",
    kind: "first",
    name: { uk: "First", us: "First" },
    minutes: 30,
    waitsFor: [],
    when: "",
    sources: ["build"],
  } as const;
  const needs = skirt.needs.map((need) => ({ ...need, formula: "body.hip * layers" }));
  const made: Construction = {
    ...skirt,
    medianBody: { hip: "36 in" },
    operations: [...skirt.operations, alter],
    fittings: [fitting],
    needs,
  };
  return { ...small, constructions: [made] };
})();
const garments = garmentsOf(staging);
const before = { staging, garments, works: breakDown(staging, garments) };
const effect = (begun: readonly string[], ...changes: readonly Recast[]) => castingEffect(before, recast(staging, changes), new Set(begun));
const said = (...given: Parameters<typeof effect>) =>
  effect(...given).garments.map(({ kind, garment, minutes, fittingMinutes }) => [kind, garment.number, minutes, fittingMinutes]);

const bo: Recast = { cast: "first", role: "snow", place: 1, standing: "cast", performers: ["bo"] };
const cover: Recast = { cast: "first", role: "queen", place: 1, standing: "cover", performers: ["ines", "bo"] };
const third: Recast = { cast: "third", role: "snow", place: 1, standing: "cast", performers: ["bo"] };
const without: Recast = { cast: "second", role: "snow", place: 2, standing: "cast", performers: null };

describe("what a change of the casting does", () => {
  it("is nothing where nothing changes", () => {
    const { garments: none, fittings, minutes, materials, renumbered } = effect([], { ...bo, performers: ["ines"] });
    expect([none, fittings, minutes, materials, renumbered]).toEqual([[], [], 0, [], 0]);
  });

  it("makes a garment that is not begun for another body: the same work, other net", () => {
    expect(said([], bo)).toEqual([
      ["recut", "MG 001", 0, 0],
      ["refit", "MG 004", 0, 0],
    ]);
    const { materials, fittings } = effect([], bo);
    expect(materials.map(({ material, before: was, after: is }) => [material, was === is])).toEqual([["net-54", false]]);
    expect(fittings.map(({ change, before: was, after: is }) => [change, was, is])).toEqual([["other performer", "ines", "bo"]]);
  });

  it("refits a garment that is begun: its alteration, and no net", () => {
    expect(said(["MG 001"], bo)[0]).toEqual(["refit", "MG 001", 90, 0]);
    expect(effect(["MG 001"], bo).materials).toEqual([]);
  });

  it("adds a garment and a fitting for a place a cast did not have, and says that numbers move", () => {
    expect(said([], third)).toEqual([
      ["wearers", "MG 001", 0, 15],
      ["added", "MG 008", 0, 0],
    ]);
    expect(effect([], third).fittings.map(({ change, after }) => [change, after])).toEqual([["added", "bo"]]);
    expect(effect([], { ...third, role: "queen" }).renumbered).toBe(0);
  });

  it("fits a cover to the garment of the place, and drops what nobody wears", () => {
    expect(said([], cover).map(([kind]) => kind)).toEqual(["wearers"]);
    const dropped = effect([], without);
    expect(dropped.garments.map(({ kind }) => kind)).toEqual(["wearers", "dropped"]);
    expect(dropped.garments.at(-1)?.garment.number).toBe("MG 007");
    expect(said(["MG 007"], without).at(-1)).toEqual(["dropped", "MG 007", 0, 0]);
  });
});

describe("the appointments a change of the casting touches", () => {
  const day = "2027-02-02" as PlainDate;
  const at = wallMinute(day, 12 * 60);
  const planned = [
    { garment: "MG 001", name: "First", performer: "ines", start: at, end: at + 30 },
  ] as unknown as readonly PlannedFitting[];
  const moves = (calls: Staging["calls"]) =>
    fittingMoves(effect([], bo).fittings, planned, calls, DEFAULT_RULES, 0).map(({ at: was, keepsTime, next }) => [was, keepsTime, next]);

  it("keep their time where who is fitted now is free then", () => expect(moves(staging.calls)).toEqual([[at, true, at]]));

  it("otherwise move to the first time that is free, or to none", () => {
    const rehearsal = { performer: "bo", date: day, from: 11 * 60, to: 13 * 60, kind: "rehearsal" } as const;
    expect(moves([...staging.calls, rehearsal])).toEqual([[at, false, wallMinute(day, 13 * 60)]]);
    expect(moves([])).toEqual([[at, false, null]]);
  });
});
