import { describe, expect, it } from "vitest";
import type { Construction, Operation } from "#lib/constructions/construction";
import type { Material } from "#lib/materials/material";
import { LENGTH_PER_INCH } from "#lib/units/quantities";
import { breakDownOne } from "./breakDownOne";
import type { MakingRequest } from "./request";

const both = (text: string) => ({ uk: text, us: text });
const operation = (code: string, more: Partial<Operation> = {}): Operation => ({
  code,
  name: both(code),
  part: "body",
  skill: "hand",
  machine: null,
  setupMinutes: [10, 20, 30],
  rates: [],
  waitsFor: [],
  batch: false,
  learning: 1000,
  pauses: true,
  straining: null,
  when: "",
  sources: ["build"],
  ...more,
});
const wait = (on: string, lagMinutes = 0) => ({ on, lagMinutes, lagKind: "elapsed" as const });

const flag: Construction = {
  code: "flag",
  version: 3,
  name: both("Flag"),
  source: "invented",
  cautions: [],
  medianBody: { waist: "70 cm" },
  parameters: [
    { code: "bows", label: both("Bows"), kind: "count", value: 4, min: 0, max: 9 },
    { code: "dyed", label: both("Dyed"), kind: "yes-no", value: false },
    { code: "share", label: both("Share"), kind: "count", value: 2, min: 0, max: 9 },
  ],
  layers: [],
  drivers: [
    { code: "bowCount", label: both("bows"), unit: "count", formula: "bows" },
    { code: "edge", label: both("edge"), unit: "length", formula: "2 * body.waist" },
    { code: "shared", label: both("shared"), unit: "ratio", formula: "bows / share" },
  ],
  operations: [
    operation("wash"),
    operation("dye", { waitsFor: [wait("wash")], when: "dyed" }),
    operation("sew", {
      waitsFor: [wait("dye", 720)],
      learning: 900,
      rates: [
        { driver: "bowCount", seconds: [30, 61, 120] },
        { driver: "edge", seconds: [60, 60, 60] },
      ],
    }),
  ],
  fittings: [],
  needs: [
    {
      role: "cloth",
      label: both("Cloth"),
      kind: "cloth",
      measure: "length",
      material: "silk",
      cut: "panels",
      formula: "20 in",
      count: "bows",
      breadth: "18 in",
      operation: "sew",
      when: "",
      sources: ["build"],
    },
    {
      role: "bow",
      label: both("Bows"),
      kind: "trim",
      measure: "count",
      material: "",
      cut: "plain",
      formula: "bows",
      count: "",
      breadth: "",
      operation: "sew",
      when: "",
      sources: ["build"],
    },
  ],
};

const silk: Material = {
  code: "silk",
  name: "Silk",
  kind: "cloth",
  measure: "length",
  colour: "red",
  width: 40 * LENGTH_PER_INCH,
  cuttable: 38 * LENGTH_PER_INCH,
  shrinkage: 0,
  spare: 0,
  kerf: 0,
  keep: null,
  grain: "fixed",
};
const request: MakingRequest = {
  garment: "F 1",
  construction: flag,
  source: "build",
  parameters: {},
  body: { waist: 56_000 },
  chosen: { bow: "ribbon-bow" },
  materials: new Map([["silk", silk]]),
  ordinal: 1,
  oneLotSet: "flags",
  wearers: 3,
  reader: { words: "uk", lengths: "cm" },
};
const work = (change: Partial<MakingRequest> = {}) => breakDownOne({ ...request, ...change });
const minutes = (change: Partial<MakingRequest>, code: string) => work(change).operations.find((each) => each.code === code);

describe("time", () => {
  it("is set-up and rates times drivers, rounded up once", () => {
    // 20 min + 4 x 61 s + 1.4 m x 60 s = 1200 + 244 + 84 s = 25.47 min
    expect(minutes({}, "sew")?.minutes).toEqual([14, 26, 40]);
    expect(minutes({}, "sew")?.arithmetic).toBe("20 min + 4 bows x 1 min 1 s + 1.4 m of edge x 1 min a metre = 26 min");
  });

  it("falls with the ordinal in its set by the learning of the operation, and never without one", () => {
    // 90% unit curve: third unit 0.846; 25.47 x 0.846 = 21.55
    expect(minutes({ ordinal: 3 }, "sew")).toMatchObject({ minutes: [12, 22, 34], learningFactor: 846, setup: [9, 17, 26] });
    expect(minutes({ ordinal: 3 }, "sew")?.arithmetic).toContain("x 0.85 as third of its set");
    expect(minutes({ ordinal: 3 }, "wash")?.minutes).toEqual([10, 20, 30]);
  });
});

describe("order", () => {
  it("passes over an operation that falls away: who waited for it waits for what it waited for", () => {
    expect(minutes({}, "sew")?.waitsFor).toEqual([wait("wash")]);
    expect(minutes({ parameters: { dyed: "yes" } }, "sew")?.waitsFor).toEqual([wait("dye", 720)]);
  });

  it("fits later wearers once everything is done when there is no final fitting", () => {
    const fittings = [
      {
        code: "try",
        kind: "first" as const,
        name: both("Try"),
        minutes: 20,
        waitsFor: [wait("wash")],
        when: "",
        sources: ["build" as const],
      },
    ];
    expect(
      work({ construction: { ...flag, fittings } }).fittings.map(({ code, wearer, waitsFor }) => [
        code,
        wearer,
        waitsFor.map(({ on }) => on),
      ]),
    ).toEqual([
      ["try", 0, ["wash"]],
      ["fit-cover-2", 1, ["sew", "try"]],
      ["fit-cover-3", 2, ["sew", "try"]],
    ]);
  });
});

describe("needs", () => {
  it("count rows of panels across the cuttable width, and keep the set's dye lot for cloth only", () => {
    const needs = work().needs;
    expect(needs[0]).toMatchObject({
      material: "silk",
      quantity: 2 * 20 * LENGTH_PER_INCH,
      oneLotSet: "flags",
      cuts: [{ count: 4, length: 40_640, breadth: 36_576 }],
    });
    expect(needs[1]).toMatchObject({ material: "ribbon-bow", quantity: 4, oneLotSet: null });
  });

  it("tell a material that nobody named, that is not known, or is sold otherwise", () => {
    const texts = (change: Partial<MakingRequest>) => work(change).notes.map(({ text }) => text);
    expect(texts({ chosen: {} })).toContain('Bows: no material is named for "bow". Name one in the piece.');
    expect(texts({})).toContain('Bows: "ribbon-bow" is not among the materials.');
    expect(texts({ materials: new Map([["silk", { ...silk, measure: "count" as const }]]) }).join()).toContain("Silk is sold by count");
    expect(texts({ materials: new Map([["silk", { ...silk, cuttable: 30_000 }]]) }).join()).toContain("does not lie across");
  });
});

describe("what is wrong is told, never silent", () => {
  it("an unknown parameter, one outside its limits, one that cannot be read", () => {
    const { notes, drivers } = work({ parameters: { bows: "12", dyed: "perhaps", colour: "red" } });
    expect(notes.filter(({ kind }) => kind === "parameter").map(({ text }) => text)).toEqual([
      '"colour" is no parameter of flag; there are bows, dyed, share.',
      "bows: 12 is outside 0 to 9. Worked with 4.",
      'dyed: "perhaps" is neither yes nor no. Worked with false.',
    ]);
    expect(drivers[0]?.value).toBe(4);
  });

  it("a division by nothing", () => {
    expect(work({ parameters: { share: "0" } }).notes[0]?.text).toContain("shared: Division by nothing.");
  });

  it("a measurement that is not known: the construction's median stands in", () => {
    const { notes, drivers } = work({ body: {} });
    expect(notes[0]).toMatchObject({ kind: "measurement", text: expect.stringContaining("waist is not known: 70 cm is taken") });
    expect(drivers[1]?.value).toBe(2 * 56_000);
  });

  it("a source for which the construction states no work", () => {
    expect(work({ source: "buy" })).toMatchObject({ operations: [], needs: [], notes: [{ kind: "caution" }] });
  });
});
