import { describe, expect, it } from "vitest";
import { sheetLines } from "./sheetLines";

const sheet = {
  name: "hooks",
  title: "Hooks",
  headings: ["hook_size", "count"],
  rows: [
    ["3", "120"],
    ["2", "8"],
    ["1", ""],
  ],
};

describe("a table in a terminal", () => {
  it("has columns as wide as their widest cell, and no blanks at the ends", () => {
    expect(sheetLines(sheet)).toEqual(["", "Hooks (3)", "  hook size  count", "  3          120", "  2          8", "  1"]);
  });

  it("says how many rows it leaves out, and where they are", () => {
    expect(sheetLines(sheet, 1, ": ask for all.")).toEqual([
      "",
      "Hooks (3)",
      "  hook size  count",
      "  3          120",
      "  and 2 more: ask for all.",
    ]);
    expect(sheetLines({ ...sheet, rows: [] })).toEqual(["", "Hooks: none."]);
  });
});
