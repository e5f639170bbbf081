import { describe, expect, it } from "vitest";
import { crawfordTotal, crawfordUnit, learningFactor, wrightAverage, wrightTotal, wrightUnit } from "#lib/labour/learning";
import published from "./learning.json";

const curves = Object.entries(published.unitTables.curves).map(([percent, rows]) => ({ learning: Number(percent) * 10, rows }));

describe("Crawford unit curves", () => {
  it.each(curves)("agree with the tables of unit and cumulative factors at $learning per mille", ({ learning, rows }) => {
    for (const [n, unit, total] of rows) {
      expect(crawfordUnit(n!, learning)).toBeCloseTo(unit!, 5);
      expect(crawfordTotal(n!, learning)).toBeCloseTo(total!, 5);
    }
  });

  /** Each figure, and whether it was found or recalled, in learning.json under `checks`. */
  const check = (what: string): number => published.checks.find((each) => each.what === what)!.published;

  it("meet single published figures", () => {
    expect(crawfordUnit(20, 900)).toBeCloseTo(check("unit 90%, n=20"), 3);
    expect(crawfordUnit(10, 850)).toBeCloseTo(check("unit 85%, n=10"), 3);
    expect(Math.round(812 * crawfordUnit(250, 750))).toBe(check("Kerzner: 812 h, 75%, unit 250"));
    expect(Math.abs(crawfordUnit(4, 850) - check("Heizer 85%: unit 4"))).toBeLessThanOrEqual(0.0005 + 1e-12);
    expect(crawfordTotal(10, 800)).toBeCloseTo(check("Heizer 80%: cumulative 10"), 3);
    expect(crawfordTotal(10, 850)).toBeCloseTo(check("Heizer 85%: cumulative 10"), 3);
  });
});

describe("Wright cumulative average curve", () => {
  it("gives the published averages and totals of 100 hours at 80%", () => {
    for (const [n, average, total] of published.wrightCumAverage100h80pct.rows) {
      expect(100 * wrightAverage(n!, 800)).toBeCloseTo(average!, 6);
      expect(100 * wrightTotal(n!, 800)).toBeCloseTo(total!, 6);
    }
  });

  it("puts the second unit at 60% of the first on the 80% curve", () => {
    expect(wrightUnit(2, 800)).toBeCloseTo(published.wrightCumAverage100h80pct.secondUnitShare, 9);
  });

  it("gives 245.76 hours for units 9 to 16: the source prints 254.76, which its own totals contradict", () => {
    expect(100 * (wrightTotal(16, 800) - wrightTotal(8, 800))).toBeCloseTo(245.76, 6);
  });
});

describe("learningFactor", () => {
  it("is the unit curve in whole thousandths, 1000 for the first and where there is no learning", () => {
    expect([
      learningFactor(1, 800),
      learningFactor(9, 1000),
      learningFactor(2, 900),
      learningFactor(3, 900),
      learningFactor(20, 900),
    ]).toEqual([1000, 1000, 900, 846, 634]);
  });
});
