import { describe, expect, it } from "vitest";
import { numberRanges, rangeText } from "./numberRanges";

describe("numbers of garments", () => {
  it("are drawn together where they follow one another", () => {
    const ranges = numberRanges(["WL 003", "WL 004", "WL 005", "WL 007", "HM 008", "HM 009", "tights", "WL 009", "WL 010"]);
    expect(ranges.map(rangeText)).toEqual(["WL 003–005", "WL 007", "HM 008–009", "tights", "WL 009–010"]);
  });

  it("are each there once, whatever the order", () => {
    expect(numberRanges(["WL 002", "WL 001", "WL 002"])).toEqual([["WL 002"], ["WL 001"]]);
  });
});
