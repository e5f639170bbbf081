import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readHours, showHours } from "./hours";
import { readPerMille, showPerMille } from "./perMille";

const minutes = (text: string) => {
  const read = readHours(text);
  return read.ok ? read.value : null;
};

describe("hours", () => {
  it.each([
    ["3 h 30", 210],
    ["3h05 min", 185],
    ["3.5 h", 210],
    ["3½ h", 210],
    ["3:30", 210],
    ["45 min", 45],
    ["2 hours", 120],
  ])("reads %s", (text, expected) => expect(minutes(text)).toBe(expected));

  it.each(["", "3", "three h", "3 h 75", "h"])("refuses %j", (text) => expect(minutes(text)).toBeNull());

  it("shows what reads back to the same minutes", () => {
    expect([0, 45, 180, 210, 605, -90].map(showHours)).toEqual(["0 min", "45 min", "3 h", "3 h 30", "10 h 05", "-1 h 30"]);
    fc.assert(
      fc.property(fc.nat(100_000), (value) => {
        expect(minutes(showHours(value))).toBe(value);
      }),
    );
  });
});

describe("per mille", () => {
  it("reads a share with its sign and refuses one without", () => {
    expect(["75%", "7,5 %", "750‰"].map((text) => readPerMille(text))).toEqual([750, 75, 750].map((value) => ({ ok: true, value })));
    expect(readPerMille("0.75").ok).toBe(false);
  });

  it("shows what reads back to the same share", () => {
    fc.assert(
      fc.property(fc.nat(5000), (share) => {
        expect(readPerMille(showPerMille(share))).toEqual({ ok: true, value: share });
      }),
    );
  });
});
