import { describe, expect, it } from "vitest";
import { recast } from "#lib/casting/recast";
import { smallStaging } from "#lib/staging/fixtures";
import { clearedBlock, copiedBlock } from "./gridBlock";
import { gridView } from "./gridView";

const staging = smallStaging();
const asked = { open: [], further: "", covers: false };
const view = gridView(staging, asked);
const at = (row: number, column: number) => ({ row, column });

describe("a block of the casting", () => {
  it("is copied as a spreadsheet takes it, whichever corner it began at", () => {
    const text = "Ines Falk\tRuth Amsel\n\t\nRuth Amsel\tInes Falk";
    expect(copiedBlock(staging, view, at(0, 1), at(2, 2))).toBe(text);
    expect(copiedBlock(staging, view, at(2, 2), at(0, 0))).toBe(text);
  });

  it("is cleared of people, and cleared again of places", () => {
    const once = clearedBlock(view, at(0, 1), at(0, 3));
    expect(once.map(({ cast, performers }) => [cast, performers])).toEqual([
      ["first", []],
      ["second", []],
    ]);
    const emptied = recast(staging, once);
    expect(clearedBlock(gridView(emptied, asked), at(0, 1), at(0, 3)).map(({ performers }) => performers)).toEqual([null, null]);
  });
});
