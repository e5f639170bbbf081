import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutAtOnce } from "./cutAtOnce";
import { firstFitDecreasing } from "./firstFit";

describe("stocks cut at once", () => {
  it("hold every piece once, none beyond its length, and are never more than first fit takes", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 12, max: 70 }), { maxLength: 50 }), (pieces) => {
        const plan = cutAtOnce(pieces, 100);
        expect(plan.flat().sort((a, b) => a - b)).toEqual(pieces.map((_, index) => index));
        for (const stock of plan) expect(stock.reduce((sum, index) => sum + pieces[index]!, 0)).toBeLessThanOrEqual(100);
        expect(plan.length).toBeLessThanOrEqual(firstFitDecreasing(pieces, 100).length);
      }),
    );
  });

  it("are 9 where first fit takes 11 (Johnson, Demers, Ullman, Garey & Graham 1974; from memory)", () => {
    const pieces = [...Array(6).fill(51), ...Array(6).fill(27), ...Array(6).fill(26), ...Array(12).fill(23)] as number[];
    expect(firstFitDecreasing(pieces, 100)).toHaveLength(11);
    expect(cutAtOnce(pieces, 100)).toHaveLength(9);
  });
});
