import { describe, expect, it } from "vitest";
import { words } from "./words";

const uk = words("uk");
const us = words("us");

describe("words", () => {
  // Pairs from the trade's vocabulary, common practice, no source.
  it.each([
    ["toile", "toile", "muslin"],
    ["cover", "cover", "understudy"],
    ["hire", "hire", "rent"],
    ["knickers", "knickers", "panty"],
    ["casual", "casual", "overhire"],
    ["cutter", "cutter", "draper"],
    ["costumeHead", "head of wardrobe", "costume director"],
    ["petersham", "petersham", "grosgrain"],
  ] as const)("says %s in both usages", (key, ukWord, usWord) => {
    expect([uk.trade[key], us.trade[key]]).toEqual([ukWord, usWord]);
  });

  it("never calls a garment's work a breakdown nor a sleeveless tunic a vest, which mean other things elsewhere", () => {
    const all = [uk, us].flatMap((usage) => Object.values(usage).flatMap((group) => Object.values(group)));
    expect(all.length).toBeGreaterThan(200);
    expect(all.filter((word) => word.trim() === "" || /breakdown|\bvest\b/i.test(word))).toEqual([]);
  });

  it("keeps the labels of one group apart from each other", () => {
    for (const usage of [uk, us])
      for (const group of Object.values(usage)) expect(new Set(Object.values(group)).size).toBe(Object.keys(group).length);
  });
});
