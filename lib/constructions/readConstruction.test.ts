import { describe, expect, it } from "vitest";
import { faultText } from "#lib/exchange/fault";
import { readConstruction } from "./readConstruction";

const operation = (code: string, waitsFor: readonly string[] = [], more: object = {}) => ({
  code,
  name: code,
  part: "body",
  skill: "net",
  setupMinutes: [1, 2, 3],
  waitsFor,
  ...more,
});

const sound = {
  code: "sash",
  version: 1,
  name: { uk: "Sash", us: "Sash" },
  source: "common practice, no source",
  medianBody: { waist: "64 cm" },
  parameters: [{ code: "rows", label: "Rows", kind: "count", value: 2, min: 1, max: 9 }],
  drivers: [{ code: "edge", label: "edge", unit: "length", formula: "rows * body.waist" }],
  operations: [operation("cut"), operation("sew", ["cut"], { rates: [{ driver: "edge", seconds: [1, 2, 3] }] })],
  needs: [
    {
      role: "cloth",
      label: "Cloth",
      kind: "cloth",
      measure: "length",
      material: "satin",
      cut: "plain",
      formula: "edge + 2 in",
      operation: "cut",
    },
  ],
};

const faults = (change: object): readonly string[] => {
  const read = readConstruction(JSON.stringify({ ...sound, ...change }), "sash.json");
  return read.ok ? [] : read.error.map(faultText);
};

describe("readConstruction", () => {
  it("reads a sound one, with its short forms filled in", () => {
    const read = readConstruction(`\uFEFF${JSON.stringify(sound)}`, "sash.json");
    expect(read.ok && read.value.operations[1]?.waitsFor).toEqual([{ on: "cut", lagMinutes: 0, lagKind: "elapsed" }]);
    expect(read.ok && read.value.operations[0]?.sources).toEqual(["build"]);
    expect(read.ok && read.value.parameters[0]?.label).toEqual({ uk: "Rows", us: "Rows" });
  });

  it("reads back what it gave, unchanged", () => {
    const read = readConstruction(JSON.stringify(sound), "sash.json");
    const again = read.ok ? readConstruction(JSON.stringify(read.value), "sash.json") : read;
    expect(again).toEqual(read);
  });

  it("names a ring of waits", () => {
    const operations = [operation("cut", ["press"]), operation("sew", ["cut"]), operation("press", ["sew"])];
    expect(faults({ operations }).join()).toContain("cut waits for press waits for sew waits for cut");
  });

  it("refuses a length added to a count, with the place and the mend", () => {
    const drivers = [{ code: "edge", label: "edge", unit: "length", formula: "body.waist + rows" }];
    expect(faults({ drivers })[0]).toBe(
      'sash.json:drivers.edge: "body.waist + rows", at 12: "+" cannot join a length and a count. Give both sides the same unit: multiply by a length, or divide by one (for example 1 in).',
    );
  });

  it("refuses a driver used before it is worked out", () => {
    const drivers = [
      { code: "edge", label: "edge", unit: "length", formula: "later * 2" },
      { code: "later", label: "later", unit: "length", formula: "body.waist" },
    ];
    expect(faults({ drivers })[0]).toContain("later is not known here");
  });

  it("refuses a driver that does not come to its unit", () => {
    expect(faults({ drivers: [{ code: "edge", label: "edge", unit: "count", formula: "rows / 2" }] })[0]).toContain(
      "Round it with ceil, floor or round.",
    );
  });

  it("refuses references to what is not there", () => {
    const operations = [operation("cut", ["wash"], { rates: [{ driver: "edges", seconds: [1, 1, 1] }] })];
    const text = faults({ operations, needs: [{ ...sound.needs[0], operation: "dye" }] }).join("\n");
    expect(text).toContain('There is no driver "edges". Known are edge.');
    expect(text).toContain('There is no operation or fitting "wash".');
    expect(text).toContain('There is no operation "dye".');
  });

  it("asks for a median for every measurement that a formula names", () => {
    expect(faults({ medianBody: {} })[0]).toContain("body.waist is used but has no median.");
  });

  it("refuses a value outside its limits, a doubled code and a reserved name", () => {
    const count = { code: "rows", label: "Rows", kind: "count", value: 20, min: 1, max: 9 };
    expect(faults({ parameters: [count, { ...count, value: 2 }, { ...count, code: "pi", value: 2 }] })).toHaveLength(3);
  });

  it("tells all faults of shape at once, and what is not JSON", () => {
    expect(faults({ version: 0, code: "Sash!", colour: "red" })).toHaveLength(3);
    const broken = readConstruction("{", "sash.json");
    expect(!broken.ok && broken.error[0]?.problem).toContain("It is not JSON");
  });

  it("compares a choice only with its own options", () => {
    const parameters = [
      ...sound.parameters,
      {
        code: "hem",
        label: "Hem",
        kind: "choice",
        value: "raw",
        options: [
          { code: "raw", label: "raw" },
          { code: "bound", label: "bound" },
        ],
      },
    ];
    expect(faults({ parameters, operations: [operation("cut", [], { when: 'hem = "bound"' }), sound.operations[1]] })).toEqual([]);
    expect(faults({ parameters, operations: [operation("cut", [], { when: 'hem = "band"' }), sound.operations[1]] })[0]).toContain(
      "raw, bound can never be band.",
    );
  });
});
