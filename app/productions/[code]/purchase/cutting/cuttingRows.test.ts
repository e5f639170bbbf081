import { describe, expect, it } from "vitest";
import { layOut } from "#lib/cutting/layOut";
import { alikePatterns, pieceRows } from "./cuttingRows";

const goods = { material: "BONE", set: null, lot: null, cuttable: null, stock: 100, kerf: 0, keep: null, turned: false };
const bone = (garment: string, length: number) => ({ garment, label: `bone ${length}`, length, breadth: null });

describe("cutting, as it is shown", () => {
  const plan = layOut([bone("LM 1", 50), bone("LM 1", 50), bone("LM 2", 50), bone("LM 2", 50), bone("LM 2", 30)], goods);
  if (!plan) throw new Error("no plan");

  it("draws stocks that are cut alike once, and counts them all", () => {
    expect(alikePatterns(plan).map(({ times, garments }) => [times, garments])).toEqual([
      [2, ["LM 1", "LM 2"]],
      [1, ["LM 2"]],
    ]);
    expect(alikePatterns(plan).reduce((sum, { times }) => sum + times, 0)).toBe(plan.count);
  });

  it("lists every piece, longest first, alike ones together", () => {
    expect(pieceRows(plan).map(({ label, count, garments }) => [label, count, garments])).toEqual([
      ["bone 50", 4, ["LM 1", "LM 2"]],
      ["bone 30", 1, ["LM 2"]],
    ]);
  });
});
