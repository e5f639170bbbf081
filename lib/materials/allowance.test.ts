import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { allowance, sharedAllowance, withAllowance } from "./allowance";
import { stockLength } from "./handling";
import type { Material } from "./material";
import { showQuantity } from "./showQuantity";

const cloth: Material = {
  code: "BOB",
  name: "Bobbinet",
  kind: "net",
  measure: "length",
  colour: "white",
  width: null,
  cuttable: null,
  shrinkage: 300,
  spare: 100,
  kerf: 0,
  keep: null,
  grain: "fixed",
};

describe("allowance", () => {
  it("leaves the need after washing: cotton bobbinet may lose up to 30% (sharpsewingny.blogspot.com, start of a tutu)", () => {
    expect(allowance({ ...cloth, spare: 0 }, 700)).toEqual({ shrinkage: 300, spare: 0 });
    expect(allowance(cloth, 700)).toEqual({ shrinkage: 300, spare: 100 });
  });

  it("is shared out so that the shares add up to the whole and none is less than its need", () => {
    const shares = fc.integer({ min: 0, max: 999 });
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 10_000_000 })), shares, shares, (needs, shrinkage, spare) => {
        const material = { ...cloth, shrinkage, spare };
        const shared = sharedAllowance(material, needs);
        expect(shared.reduce((sum, share) => sum + share, 0)).toBe(
          withAllowance(
            material,
            needs.reduce((sum, need) => sum + need, 0),
          ),
        );
        for (const [at, share] of shared.entries()) expect(share).toBeGreaterThanOrEqual(needs[at]!);
      }),
    );
  });
});

describe("one piece a pack", () => {
  it("is the rod, the coil or the bolt; soft goods by the yard have none", () => {
    const yard = 73152;
    expect(stockLength({ ...cloth, kind: "bone" }, yard)).toBe(yard);
    expect(stockLength(cloth, yard)).toBeNull();
    expect(stockLength(cloth, 50 * yard)).toBe(50 * yard);
    expect(stockLength({ ...cloth, measure: "count" }, 100)).toBeNull();
  });
});

describe("a quantity in words", () => {
  it("is in yards or metres to two places, or pieces", () => {
    expect(showQuantity(1113367, "length", "in")).toBe("15.22 yd");
    expect(showQuantity(80000 * 20, "length", "cm")).toBe("20 m");
    expect(showQuantity(640, "count", "cm")).toBe("640");
  });
});
