import { describe, expect, it } from "vitest";
import { smallStaging } from "#lib/staging/fixtures";
import { bodyOf } from "./body";

const staging = smallStaging();
const inch = 2032;

describe("bodyOf", () => {
  it("takes the newest sheet and what is missing there from the size group, and says so", () => {
    const body = bodyOf(staging, { performer: "ines", sizeGroup: "W10" });
    expect(body.values).toEqual({ waist: 24.5 * inch, hip: 915 * 80, napeToWaist: 15.25 * inch });
    expect(body.fallbacks).toEqual(["napeToWaist"]);
    expect(body.sheet?.taken).toBe("2027-01-14");
  });

  it("stands a place not yet cast on its size group alone", () => {
    const body = bodyOf(staging, { performer: null, sizeGroup: "W10" });
    expect(body.values).toEqual({ waist: 25 * inch, hip: 36 * inch, napeToWaist: 15.25 * inch });
    expect(body.fallbacks).toEqual(["waist", "hip", "napeToWaist"]);
    expect(body.sheet).toBeNull();
  });

  it("has no figures where neither the performer nor the group was measured", () => {
    expect(bodyOf(staging, { performer: "bo", sizeGroup: "M40" })).toEqual({ values: {}, fallbacks: [], sheet: null });
  });

  it("takes the later in the list of two sheets of one day", () => {
    const sheet = (waist: number) => ({
      of: { performer: "ines" },
      taken: staging.production.starts,
      body: "warm" as const,
      values: { waist },
    });
    const body = bodyOf({ measurements: [sheet(1), sheet(2)] }, { performer: "ines", sizeGroup: "W10" });
    expect(body.values.waist).toBe(2);
  });
});
