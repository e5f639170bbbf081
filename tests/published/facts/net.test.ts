import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { breakDownOne } from "#lib/breakdown/breakDownOne";
import { widthsFor } from "#lib/breakdown/netLayers";
import { panelRows } from "#lib/breakdown/panelRows";
import type { GarmentWork } from "#lib/breakdown/work";
import { readConstruction } from "#lib/constructions/readConstruction";
import type { Material } from "#lib/materials/material";
import { LENGTH_PER_INCH, LENGTH_PER_MM, LENGTH_PER_YARD } from "#lib/units/quantities";
import facts from "./cloth.json";

const inches = (count: number) => count * LENGTH_PER_INCH;
const centimetres = (count: number) => Math.round(count * 10 * LENGTH_PER_MM);
const yards = (length: number) => length / LENGTH_PER_YARD;
const fact = (id: string) => facts.facts.find((each) => each.id === id)!.value;

const net = (width: number): Material => ({
  code: "net-stiff",
  name: "Stiff net",
  kind: "net",
  measure: "length",
  colour: "white",
  width: inches(width),
  cuttable: inches(width),
  shrinkage: 0,
  spare: 0,
  kerf: 0,
  keep: null,
  grain: "fixed",
});

const tutu = (width: number, parameters: Readonly<Record<string, string>> = {}): GarmentWork => {
  const read = readConstruction(readFileSync("seed/constructions/classical-tutu.json", "utf8"), "classical-tutu.json");
  if (!read.ok) throw new Error("the construction is not sound");
  return breakDownOne({
    garment: "T 1",
    construction: read.value,
    source: "build",
    parameters,
    body: { highHip: inches(31), hip: centimetres(91) },
    chosen: {},
    materials: new Map([["net-stiff", net(width)]]),
    ordinal: 1,
    oneLotSet: null,
    wearers: 1,
    reader: { words: "uk", lengths: "in" },
  });
};

const widthsOf = (work: GarmentWork) => work.layers.map(({ widths }) => widths);
const rollOf = (work: GarmentWork) => work.needs.find(({ role }) => role === "net")!.quantity;
const stripOf = (work: GarmentWork) => work.layers.reduce((sum, { strip }) => sum + strip, 0);
const driver = (work: GarmentWork, code: string) => work.drivers.find((each) => each.code === code)!.value;

/** Worked by us from a costumer's published depths (2 in to 15 in) and widths a layer (4 to 6). */
describe("net of twelve layers, 2 to 15 in deep in even steps, gathered to 31 in", () => {
  it("54 in wide takes four layers each of 4, 5 and 6 widths: 15.22 yd of roll, 90 yd of strip", () => {
    expect(fact("net-yards-classical-tutu-2")).toContain("2 in to 15 in wide; each layer of 4 to 6 lengths");
    const work = tutu(54);
    expect(widthsOf(work)).toEqual([4, 4, 4, 4, 5, 5, 5, 5, 6, 6, 6, 6]);
    expect(yards(rollOf(work))).toBeCloseTo(15.22, 2);
    expect(yards(stripOf(work))).toBe(90);
  });

  it("72 in wide takes 3, 4 and 5 widths of the same skirt: 12.38 yd of roll, 96 yd of strip", () => {
    const work = tutu(72);
    expect(widthsOf(work)).toEqual([3, 3, 3, 3, 4, 4, 4, 4, 5, 5, 5, 5]);
    expect(yards(rollOf(work))).toBeCloseTo(12.38, 2);
    expect(yards(stripOf(work))).toBe(96);
  });

  it("is 15 yd off the roll as published, to a twentieth, and between the published 10 and 15 yd with ten layers", () => {
    expect(fact("net-yards-classical-tutu-2")).toContain("15 yards of net for the skirt alone");
    expect(Math.abs(yards(rollOf(tutu(54))) / 15 - 1)).toBeLessThanOrEqual(0.05);
    expect(fact("net-yards-classical-tutu")).toContain("about 10 yards");
    const ten = yards(rollOf(tutu(54, { layers: "10" })));
    expect(ten).toBeGreaterThan(10);
    expect(ten).toBeLessThan(15);
  });

  it("six 54 in lengths gathered to 31 in are a fullness of 10.45 (common practice, no source)", () => {
    expect((6 * 54) / 31).toBeCloseTo(10.45, 2);
    expect(widthsFor(10.45 * inches(31), inches(54))).toBe(6);
  });
});

/** Worked by us; the overlap of at least 8 in is published, 20 cm is ours. */
describe("hoop for a hip of 91 cm, 20 cm out", () => {
  it("rings 216.7 cm and is cut 236.7 cm with 20 cm of overlap", () => {
    expect(fact("hoop-wire-length")).toContain("at least 8 inches");
    const work = tutu(54, { hoopOut: "20 cm", hoopOverlap: "20 cm" });
    expect(driver(work, "hoopRing") / (10 * LENGTH_PER_MM)).toBeCloseTo(216.7, 1);
    expect(driver(work, "hoopCut") / (10 * LENGTH_PER_MM)).toBeCloseTo(236.7, 1);
  });

  it("cuts a double wire twice and none for no hoop, but always sews the casing", () => {
    const hoops = (hoop: string) => tutu(54, { hoop }).needs.filter(({ role }) => role === "hoop" || role === "casing");
    expect(hoops("double").map(({ role, cuts, quantity }) => [role, cuts[0]?.count ?? quantity > 0])).toEqual([
      ["casing", true],
      ["hoop", 2],
    ]);
    expect(hoops("none").map(({ role }) => role)).toEqual(["casing"]);
  });
});

/** Worked by us from a student maker's published panels of 29 x 36 in: layers of 5, 7, 9, 11 and 13. */
describe("45 romantic panels 29 in broad and 36 in long", () => {
  const layers = [5, 7, 9, 11, 13];
  it("lie two across 58 in: 23 rows when layers share them, 25 layer by layer", () => {
    expect(panelRows(layers, inches(29), inches(58))).toEqual({ across: 2, shared: 23, layerByLayer: 25 });
    expect(yards(23 * inches(36))).toBe(23);
  });
  it("lie one across 58 in goods less two inches of selvedge: 45 rows", () => {
    expect(fact("cuttable-width-2")).toContain("two inches narrower");
    expect(panelRows(layers, inches(29), inches(56))).toEqual({ across: 1, shared: 45, layerByLayer: 45 });
  });
});

describe("a cover 120 in wide and 120 in long from 54 in goods", () => {
  it("takes 3 widths and 10 yards (published: designandmake.net/glossary/width)", () => {
    expect(fact("widths-check")).toContain("10 yards");
    const widths = widthsFor(inches(120), inches(54));
    expect(widths).toBe(3);
    expect(yards(widths * inches(120))).toBe(10);
  });
});

describe("hooks", () => {
  it("stand 1 1/4 in apart (The New Dressmaker, p. 117), an inch when partnered (common practice, no source)", () => {
    expect(fact("hook-spacing")).toContain("1 1/4 inch apart");
    const closing = driver(tutu(54), "closing");
    expect(driver(tutu(54), "hooks")).toBe(Math.ceil(closing / inches(1.25)) + 1);
    expect(driver(tutu(54, { partnered: "yes" }), "hooks")).toBe(Math.ceil(closing / inches(1)) + 1);
  });
});
