import { describe, expect, it } from "vitest";
import { garmentHref, isSlugOf, slug } from "./address";

describe("addresses", () => {
  it("write a garment's number with hyphens", () => {
    expect(garmentHref("LM", "HM 014")).toBe("/productions/LM/garments/HM-014");
  });

  it("are recognised as the router hands them over, and nothing else is", () => {
    for (const number of ["HM 014", "Ł 3/4", "a%b", "HM  014"]) expect(isSlugOf(slug(number), number)).toBe(true);
    expect(isSlugOf("HM-015", "HM 014")).toBe(false);
    expect(isSlugOf("%E0%A4%A", "HM 014")).toBe(false);
  });
});
