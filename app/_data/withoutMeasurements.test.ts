import { describe, expect, it } from "vitest";
import { WITHHELD } from "#lib/breakdown/withoutBody";
import type { ProductionView } from "./stagingPlan";
import { withoutMeasurements } from "./withoutMeasurements";

const construction = {
  code: "belt",
  version: 1,
  layers: [],
  drivers: [{ code: "waistLine", unit: "length", formula: "body.waist" }],
  operations: [],
  needs: [
    { role: "band", cut: "plain", formula: "waistLine + 10 cm", count: "", breadth: "" },
    { role: "hook", cut: "plain", formula: "2", count: "", breadth: "" },
  ],
};
const need = (role: string, arithmetic: string) => ({ garment: "A 1", role, arithmetic, cuts: [], quantity: 9 });
const work = {
  garment: "A 1",
  construction: { code: "belt", version: 1 },
  drivers: [{ code: "waistLine", arithmetic: "body.waist 64 cm" }],
  operations: [],
  layers: [],
  needs: [need("band", "waistLine 64 cm"), need("hook", "2")],
  notes: [],
};
const staging = { constructions: [construction], measurements: [{ of: { performer: "ines" }, values: { waist: 51_200 } }] };
const notes = [{ kind: "measurement", about: "A 1", text: "waist 64 cm", mend: "" }];
const view = {
  prepared: { staging, works: [work], notes },
  plan: {
    staging,
    works: [work],
    notes,
    cutting: [{ material: "band" }],
    purchase: { lines: [{ toBuy: 9, reasons: [need("band", "waistLine 64 cm"), need("hook", "2")] }], unoffered: [], covered: [] },
  },
} as unknown as ProductionView;

describe("a production without measurements", () => {
  const shown = withoutMeasurements(view);

  it("holds no sheet, and no figure of a body anywhere", () => {
    expect(JSON.stringify(shown)).not.toMatch(/64 cm|51200/);
    expect(JSON.stringify(view)).toMatch(/64 cm/);
  });

  it("still says what is bought for which garment, and why where no body is named", () => {
    const [line] = shown.plan?.purchase.lines ?? [];
    expect(line?.reasons.map(({ role, quantity, arithmetic }) => [role, quantity, arithmetic])).toEqual([
      ["band", 9, ""],
      ["hook", 9, "2"],
    ]);
    expect(shown.prepared.works[0]?.needs.map(({ arithmetic }) => arithmetic)).toEqual([WITHHELD, "2"]);
  });
});
