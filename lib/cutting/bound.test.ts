import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { materialBound, stocksBound } from "./bound";
import { firstFitDecreasing } from "./firstFit";

const lengths = fc.array(fc.integer({ min: 1, max: 100 }), { maxLength: 60 });

/** Fewest stocks by trying every stock for every piece: only for a handful of pieces. */
const byTrying = (pieces: readonly number[], rooms: readonly number[] = []): number => {
  const [piece, ...rest] = pieces;
  if (piece === undefined) return rooms.length;
  const into = rooms.flatMap((room, at) => (room >= piece ? [byTrying(rest, rooms.with(at, room - piece))] : []));
  return Math.min(...into, byTrying(rest, [...rooms, 100 - piece]));
};

describe("bounds of stocks", () => {
  it("lie between the material bound and what is reached", () => {
    fc.assert(
      fc.property(lengths, (pieces) => {
        const bound = stocksBound(pieces, 100);
        expect(bound).toBeGreaterThanOrEqual(materialBound(pieces, 100));
        expect(bound).toBeLessThanOrEqual(firstFitDecreasing(pieces, 100).length);
      }),
    );
  });

  it("are never above the fewest found by trying everything", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 5, max: 100 }), { maxLength: 6 }), (pieces) => {
        expect(stocksBound(pieces, 100)).toBeLessThanOrEqual(byTrying(pieces));
      }),
    );
  });

  it("count pieces over half a stock one each, where the material bound does not", () => {
    expect(materialBound([51, 51, 51], 100)).toBe(2);
    expect(stocksBound([51, 51, 51], 100)).toBe(3);
  });
});

describe("pieces that fill a stock exactly", () => {
  it("waste nothing, in the plan and in the bound", () => {
    expect(firstFitDecreasing([50, 60, 50, 40], 100)).toEqual([
      [1, 3],
      [0, 2],
    ]);
    expect(stocksBound([60, 40], 100)).toBe(1);
  });
});

describe("first-fit decreasing", () => {
  it("cuts every piece once and no stock beyond its length", () => {
    fc.assert(
      fc.property(lengths, (pieces) => {
        const plan = firstFitDecreasing(pieces, 100);
        expect(plan.flat().sort((a, b) => a - b)).toEqual(pieces.map((_, index) => index));
        for (const stock of plan) expect(stock.reduce((sum, index) => sum + pieces[index]!, 0)).toBeLessThanOrEqual(100);
      }),
    );
  });

  it("refuses a piece longer than the stock", () => {
    expect(() => firstFitDecreasing([101], 100)).toThrow(RangeError);
  });
});
