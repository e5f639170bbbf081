import { describe, expect, it } from "vitest";
import { garmentsOf } from "#lib/casting/garments";
import { find } from "./find";
import { smallStaging } from "./fixtures";

const staging = smallStaging();
const found = (question: string) => find(staging, garmentsOf(staging), question).map(({ kind, code }) => `${kind} ${code}`);

describe("finding", () => {
  it("knows performers, garments, roles, costumes, materials, makers and constructions", () => {
    expect(found("ruth")).toContain("performer ruth");
    expect(found("MG 001")[0]).toBe("garment MG 001");
    expect(found("queen")).toContain("role queen");
    expect(found("silver")).toContain("costume silver");
    expect(found("hooks")).toContain("material hooks");
    expect(found("venn")).toEqual(["maker orla"]);
    expect(found("skirt")).toContain("construction skirt");
  });

  it("puts what is called so entirely before what begins so, and that before what only has the word", () => {
    const kinds = found("snow");
    expect(kinds[0]).toBe("role snow");
    expect(kinds.length).toBeGreaterThan(2);
  });

  it("asks for every word, and passes over accents and capitals", () => {
    expect(found("FALK inés")[0]).toBe("performer ines");
    expect(found("ines ruthless")).toEqual([]);
  });

  it("of nothing is nothing", () => {
    expect(found("  ")).toEqual([]);
  });
});
