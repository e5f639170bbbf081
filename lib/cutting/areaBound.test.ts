import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { areaBound } from "./areaBound";
import { materialBound } from "./bound";

describe("stocks that no plan can do without", () => {
  it("knows that two broad pieces never lie side by side, and that a long one leaves no room for another", () => {
    const broad = Array.from({ length: 4 }, () => ({ length: 50, breadth: 28 }));
    // By area 4 x 50 x 28 of 100 x 54 are two stocks; one row each, two rows a stock: two. Rows of 51 go one a stock: four.
    expect(areaBound(broad, 100, 54)).toBe(2);
    expect(
      areaBound(
        broad.map((piece) => ({ ...piece, length: 51 })),
        100,
        54,
      ),
    ).toBe(4);
    // Two across, rows of 36 in 100: two rows, so four a stock, nine take three. By area they would take two.
    const panels = Array.from({ length: 9 }, () => ({ length: 36, breadth: 27 }));
    expect(
      materialBound(
        panels.map(({ length, breadth }) => length * breadth),
        100 * 54,
      ),
    ).toBe(2);
    expect(areaBound(panels, 100, 54)).toBe(3);
  });

  it("is never below the area", () => {
    const piece = fc.record({ length: fc.integer({ min: 1, max: 100 }), breadth: fc.integer({ min: 1, max: 54 }) });
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 20 }), (pieces) => {
        const areas = pieces.map(({ length, breadth }) => length * breadth);
        expect(areaBound(pieces, 100, 54)).toBeGreaterThanOrEqual(materialBound(areas, 5400));
      }),
    );
  });
});
