import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { LengthUnit } from "./lengthUnits";
import { LENGTH_PER_INCH, LENGTH_PER_MM, LENGTH_PER_YARD } from "./quantities";
import { readLength } from "./readLength";

const inch = LENGTH_PER_INCH;
const cm = 10 * LENGTH_PER_MM;
const value = (text: string, assumed: LengthUnit | null = null) => {
  const read = readLength(text, assumed);
  return read.ok ? read.value : read.error.problem;
};

describe("readLength", () => {
  // International yard and pound agreement of 1959 (Wikipedia, "Yard"): 1 yd = 0.9144 m and so 1 in = 25.4 mm, exactly.
  it("keeps the agreement of 1959 exactly", () => {
    expect(value("1 in")).toBe(value("25.4 mm"));
    expect(value("1 yd")).toBe(value("0.9144 m"));
    expect(value("1 ft")).toBe(value("304.8 mm"));
  });

  // designandmake.net, glossary "width": a cover 120 in long in 3 widths of 54 in goods takes 360 in = 10 yards.
  it("finds three drops of 120 in to be ten yards, as published", () => {
    expect(3 * Number(value("120 in"))).toBe(value("10 yd"));
    expect(value("10 yd")).toBe(10 * LENGTH_PER_YARD);
  });

  it.each([
    ["15 1/4 in", 15.25 * inch],
    ['15¼"', 15.25 * inch],
    ["15¼″", 15.25 * inch],
    ["15-1/4 inches", 15.25 * inch],
    ['3/8"', 0.375 * inch],
    ["½ in.", 0.5 * inch],
    ["12'", 144 * inch],
    ["5'3½\"", 63.5 * inch],
    ["5 ft 3 in", 63 * inch],
    ["1 yd 6 in", 42 * inch],
    ["1 yd, 6 in", 42 * inch],
    ["38.7 cm", 38.7 * cm],
    ["38,7cm", 38.7 * cm],
    ["1 m 20 cm", 120 * cm],
    ["2 m", 200 * cm],
    ["0.0125 mm", 1],
    [".5 in", 0.5 * inch],
    ["91 CM", 91 * cm],
  ])("reads %s", (text, length) => expect(value(text)).toBe(Math.round(length)));

  it("gives a bare number the assumed unit only when told", () => {
    expect(value("15 1/4", "in")).toBe(15.25 * inch);
    expect(value("38.7", "cm")).toBe(30960);
    expect(value("15 1/4")).toBe('"15 1/4" has no unit.');
  });

  it("refuses a fraction where centimetres are assumed, since fractions are of inches", () => {
    expect(value("15 1/4", "cm")).toBe('"15 1/4" has no unit.');
    expect(value("15 1/4 cm", "in")).toBe(15.25 * cm);
  });

  it.each([
    "",
    "wide",
    "-3 in",
    "3 in 1 yd",
    "1 yd 6 cm",
    "5 ft 3",
    "1/0 in",
    "3 stone",
    "1,234 mm",
    "12 1/4 1/4 in",
    "2 km",
    "1001 m",
    "1.2.3 cm",
  ])("refuses %j with a mend", (text) => {
    const read = readLength(text, "in");
    expect(read.ok ? null : read.error.mend).toMatch(/\S/);
  });

  it("rounds once, to the nearest eightieth of a millimetre", () => {
    fc.assert(
      fc.property(fc.nat(999), fc.integer({ min: 1, max: 999 }), fc.integer({ min: 1, max: 999 }), (whole, over, under) => {
        const exact = (whole + over / under) * inch;
        expect(Math.abs(Number(value(`${whole} ${over}/${under} in`)) - exact)).toBeLessThanOrEqual(0.5 + 1e-6);
      }),
    );
  });
});
