import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dyeBatches } from "./dyeBatches";
import type { DyeItem } from "./dyeWork";

const item = (garment: string, load: number, more: Partial<DyeItem> = {}): DyeItem => ({
  ...{ garment, operation: "dye", what: "cloth", material: "NET", colour: "moss", set: null, load },
  ...more,
});
const vat = { cloth: 100, garments: 4 };

describe("dye batches", () => {
  it("keep colours apart, and what must match together", () => {
    const herons = ["LM 1", "LM 2", "LM 3"].map((garment) => item(garment, 30, { set: "HERONS" }));
    const plan = dyeBatches([...herons, item("LM 4", 40), item("LM 5", 60), item("LM 6", 10, { colour: "rust" })], vat);
    expect(plan.batches.map(({ colour, items, full }) => [colour, items.map(({ garment }) => garment), full])).toEqual([
      ["moss", ["LM 1", "LM 2", "LM 3"], 900],
      ["moss", ["LM 5", "LM 4"], 1000],
      ["rust", ["LM 6"], 100],
    ]);
    expect(plan).toMatchObject({ fewest: 3, warnings: [] });
  });

  it("say which garments of a set may differ when it takes several vats", () => {
    const herons = ["LM 1", "LM 2", "LM 3"].map((garment) => item(garment, 45, { set: "HERONS" }));
    expect(dyeBatches(herons, vat).warnings).toEqual([
      "HERONS takes 2 vats of moss: weigh each bath alike and lay the swatches together; LM 3 may differ.",
    ]);
  });

  it("dye garments by the piece, and name what no vat takes", () => {
    const tights = Array.from({ length: 9 }, (_, at) => item(`LM ${at}`, 1, { what: "garment", material: null, colour: "skin" }));
    expect(dyeBatches(tights, vat).batches.map(({ items }) => items.length)).toEqual([4, 4, 1]);
    expect(dyeBatches([item("LM 1", 130)], vat).warnings).toHaveLength(1);
  });

  it("hold everything once, no vat too full, and never fewer than the bound", () => {
    const some = fc.tuple(fc.integer({ min: 1, max: 100 }), fc.constantFrom("moss", "rust"), fc.constantFrom(null, "HERONS", "REEDS"));
    fc.assert(
      fc.property(fc.array(some, { maxLength: 20 }), (many) => {
        const items = many.map(([load, colour, set], at) => item(`LM ${at}`, load, { colour, set }));
        const { batches, fewest } = dyeBatches(items, vat);
        expect(batches.flatMap((batch) => batch.items.map(({ garment }) => garment)).sort()).toEqual(
          items.map(({ garment }) => garment).sort(),
        );
        for (const batch of batches) {
          expect(batch.full).toBeLessThanOrEqual(1000);
          expect(new Set(batch.items.map(({ colour }) => colour)).size).toBe(1);
        }
        expect(batches.length).toBeGreaterThanOrEqual(fewest);
      }),
    );
  });
});
