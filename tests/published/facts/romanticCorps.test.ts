import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { breakDownOne } from "#lib/breakdown/breakDownOne";
import { readConstruction } from "#lib/constructions/readConstruction";
import type { Material } from "#lib/materials/material";
import { LENGTH_PER_INCH, LENGTH_PER_MM, LENGTH_PER_YARD } from "#lib/units/quantities";
import facts from "./cloth.json";

const read = readConstruction(readFileSync("seed/constructions/romantic-tutu.json", "utf8"), "romantic-tutu.json");
if (!read.ok) throw new Error("the construction is not sound");
const construction = read.value;

const inches = (count: number) => count * LENGTH_PER_INCH;
const tulle = (cuttable: number): Material => ({
  code: "net-soft",
  name: "Tulle",
  kind: "net",
  measure: "length",
  colour: "white",
  width: inches(cuttable),
  cuttable: inches(cuttable),
  shrinkage: 0,
  spare: 0,
  kerf: 0,
  keep: null,
  grain: "fixed",
});

/** Yards off the roll for one skirt of a dancer so long from waist to floor. */
const yards = (waistToFloor: number, cuttable: number, parameters: Readonly<Record<string, string>>): number => {
  const { needs } = breakDownOne({
    garment: "R 1",
    construction,
    source: "build",
    parameters,
    body: { waistToFloor: waistToFloor * 10 * LENGTH_PER_MM },
    chosen: {},
    materials: new Map([["net-soft", tulle(cuttable)]]),
    ordinal: 1,
    oneLotSet: null,
    wearers: 1,
    reader: { words: "uk", lengths: "in" },
  });
  return needs.find(({ role }) => role === "net")!.quantity / LENGTH_PER_YARD;
};

/** A corps of short, middling and tall dancers (99, 104, 108 cm from waist to floor: ours), a quarter, a half and a quarter of it. */
const corps = (dancers: number, cuttable: number, parameters: Readonly<Record<string, string>>): number => {
  const quarter = Math.round(dancers / 4);
  const each = (waistToFloor: number) => yards(waistToFloor, cuttable, parameters);
  return quarter * each(99) + (dancers - 2 * quarter) * each(104) + quarter * each(108);
};

const fact = (id: string) => facts.facts.find((each) => each.id === id)!.value;
const apart = (found: number, published: number): number => Math.abs(found / published - 1);

/** The totals are published; panels and layers are not, and those given here are ours: one panel across 54 in tulle, hems 12 in off the floor. */
describe("tulle for a romantic corps", () => {
  it("975 yd for 32 skirts: five layers of 5 to 11 panels, within a twentieth", () => {
    expect(fact("romantic-corps-32")).toContain("975 yards of tulle for 32");
    expect(apart(corps(32, 54, { layers: "5", lowestPanels: "5", topPanels: "11" }), 975)).toBeLessThanOrEqual(0.05);
  });

  it("1,400 yd for 26 skirts: six layers of 7 to 17 panels, within a twentieth", () => {
    expect(fact("romantic-corps-26")).toContain("1,400 yards for 26");
    expect(apart(corps(26, 54, { layers: "6", lowestPanels: "7", topPanels: "17" }), 1400)).toBeLessThanOrEqual(0.05);
  });

  it("the skirt as the construction has it needs less than 975 yd two panels across 58 in, and more one across 54 in", () => {
    expect(corps(32, 58, {})).toBeLessThan(975);
    expect(corps(32, 54, {})).toBeGreaterThan(975);
  });
});
