import { describe, expect, it } from "vitest";
import type { Construction } from "#lib/constructions/construction";
import { WITHHELD, withoutBody } from "./withoutBody";
import type { GarmentWork } from "./work";

const both = (text: string) => ({ uk: text, us: text });
const net = { count: "2", depth: "10 in", fullness: "5", drop: "1 in", net: "net", dyed: '"none"', casing: "false" };
const driver = (code: string, unit: "count" | "length", formula: string) => ({ code, label: both(code), unit, formula });
const operation = (code: string, driver: string) => ({ code, rates: [{ driver, seconds: [1, 2, 3] }] });
const need = (role: string, formula: string, more: object = {}) => ({ role, cut: "plain", formula, count: "", breadth: "", ...more });

const construction = {
  layers: [{ ...net, seam: "body.highHip" }],
  drivers: [
    driver("bows", "count", "4"),
    driver("waistLine", "length", "body.waist"),
    driver("hooks", "count", "ceil(waistLine / 1 in)"),
    driver("gathers", "length", "net.strip"),
    driver("tiers", "count", "net.layers"),
  ],
  operations: [operation("tie", "bows"), operation("hook", "hooks")],
  needs: [need("bow", "bows"), need("band", "waistLine"), need("net", "", { cut: "net layers" })],
} as unknown as Construction;

const named = (code: string) => ({ code, arithmetic: `of ${code}`, minutes: [1, 2, 3] });
const work = {
  garment: "A 1",
  drivers: construction.drivers.map(({ code }) => named(code)),
  operations: [named("tie"), named("hook")],
  needs: ["bow", "band", "net"].map((role) => ({ role, arithmetic: `of ${role}`, cuts: [{ length: 5 }], quantity: 7 })),
  layers: [{ layer: 1, seam: 62_000 }],
  notes: [
    { garment: "A 1", kind: "measurement", text: "waist 64 cm" },
    { garment: "A 1", kind: "caution", text: "hot" },
  ],
} as unknown as GarmentWork;

describe("work without the body", () => {
  const shown = withoutBody(work, construction);

  it("keeps the drivers that follow parameters alone, and drops those that follow the body by any way", () =>
    expect(shown.drivers.map(({ code }) => code)).toEqual(["bows", "tiers"]));

  it("withholds the arithmetic that counts the body, and no minutes", () =>
    expect(shown.operations.map(({ arithmetic, minutes }) => [arithmetic, minutes])).toEqual([
      ["of tie", [1, 2, 3]],
      [WITHHELD, [1, 2, 3]],
    ]));

  it("withholds the pieces and the arithmetic of what is cut to the body, and keeps what is bought", () =>
    expect(shown.needs.map(({ arithmetic, cuts, quantity }) => [arithmetic, cuts.length, quantity])).toEqual([
      ["of bow", 1, 7],
      [WITHHELD, 0, 7],
      [WITHHELD, 0, 7],
    ]));

  it("leaves no layers to draw a body from, and no notes of measurements", () => {
    expect(shown.layers).toEqual([]);
    expect(shown.notes.map(({ kind }) => kind)).toEqual(["caution"]);
  });

  it("leaves layers that are sewn to no body", () => {
    const plain = { ...construction, layers: [{ ...net, seam: "80 cm" }] } as unknown as Construction;
    expect(withoutBody(work, plain).layers).toBe(work.layers);
  });

  it("of a garment without a construction is without notes of measurements", () =>
    expect(withoutBody(work, null)).toEqual({ ...work, notes: [work.notes[1]] }));
});
