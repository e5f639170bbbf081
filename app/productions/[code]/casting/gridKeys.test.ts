import { describe, expect, it } from "vitest";
import { goneBy, isWithin } from "./gridKeys";

const go = (key: string, row: number, column: number, control = false) => {
  const to = goneBy(key, control, { row, column }, 30, 5);
  return to && [to.row, to.column];
};

describe("keys of the grid", () => {
  it("go a cell, to the ends of a row, by ten rows, and to the corners", () => {
    expect(go("ArrowDown", 3, 2)).toEqual([4, 2]);
    expect(go("Home", 3, 2)).toEqual([3, 0]);
    expect(go("End", 3, 2)).toEqual([3, 4]);
    expect(go("PageDown", 3, 2)).toEqual([13, 2]);
    expect(go("Home", 3, 2, true)).toEqual([0, 0]);
    expect(go("End", 3, 2, true)).toEqual([29, 4]);
    expect(go("ArrowRight", 3, 2, true)).toEqual([3, 4]);
  });

  it("stop at the edges", () => {
    expect(go("ArrowUp", 0, 2)).toEqual([0, 2]);
    expect(go("ArrowRight", 0, 4)).toEqual([0, 4]);
    expect(go("PageDown", 25, 0)).toEqual([29, 0]);
  });

  it("are no others", () => expect(go("a", 0, 0)).toBeNull());

  it("know the block between two cells, whichever was first", () => {
    const [one, other] = [
      { row: 4, column: 3 },
      { row: 2, column: 1 },
    ];
    expect(isWithin({ row: 3, column: 2 }, one, other)).toBe(true);
    expect(isWithin({ row: 5, column: 2 }, one, other)).toBe(false);
  });
});
