import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readLength } from "./readLength";
import { showCloth, showLength, writeLength } from "./showLength";

const readBack = (text: string) => {
  const read = readLength(text);
  return read.ok ? read.value : null;
};
const length = fc.nat(79_000_000);
const system = fc.constantFrom("in" as const, "cm" as const);

describe("showLength", () => {
  it("writes inches in lowest terms and centimetres to the millimetre", () => {
    expect(showLength(15.25 * 2032, "in")).toBe("15 1/4 in");
    expect(showLength(127, "in", 16)).toBe("1/16 in");
    expect(showLength(0, "in")).toBe("0 in");
    expect(showLength(15 * 2032 + 2031, "in")).toBe("16 in");
    expect(showLength(30960, "cm")).toBe("38.7 cm");
    expect(showLength(100 * 800, "cm")).toBe("100 cm");
  });

  it("is never further off than half a step", () => {
    fc.assert(
      fc.property(length, (exact) => {
        expect(Math.abs((readBack(showLength(exact, "in", 8)) ?? -1) - exact)).toBeLessThanOrEqual(127);
        expect(Math.abs((readBack(showLength(exact, "in", 16)) ?? -1) - exact)).toBeLessThanOrEqual(63.5);
        expect(Math.abs((readBack(showLength(exact, "cm")) ?? -1) - exact)).toBeLessThanOrEqual(40);
      }),
    );
  });

  it("shows cloth in eighths of a yard or hundredths of a metre, never short", () => {
    expect(showCloth(3 * 73152 + 1, "in")).toBe("3 1/8 yd");
    expect(showCloth(10 * 73152, "in")).toBe("10 yd");
    expect(showCloth(2.35 * 80_000, "cm")).toBe("2.35 m");
    fc.assert(
      fc.property(length, system, (exact, shown) => {
        const read = readBack(showCloth(exact, shown)) ?? -1;
        expect(read).toBeGreaterThanOrEqual(exact);
        expect(read - exact).toBeLessThan(shown === "in" ? 9144 : 800);
      }),
    );
  });
});

describe("writeLength", () => {
  it("reads back to the same length, whatever it is", () => {
    fc.assert(
      fc.property(length, system, (exact, written) => {
        expect(readBack(writeLength(exact, written))).toBe(exact);
      }),
    );
  });

  it("keeps the reader's system where that is exact", () => {
    expect(writeLength(15.25 * 2032, "in")).toBe("15 1/4 in");
    expect(writeLength(30960, "cm")).toBe("38.7 cm");
    expect(writeLength(30960, "in")).toBe("38.7 cm");
    expect(writeLength(1, "cm")).toBe("0.0125 mm");
  });
});
