import { describe, expect, it } from "vitest";
import { materialBound, stocksBound } from "#lib/cutting/bound";
import { firstFitDecreasing } from "#lib/cutting/firstFit";
import published from "./binPacking.json";

const instances = published.instances.map((instance) => ({
  ...instance,
  pieces: instance.lengths.flatMap((length, at) => Array.from({ length: instance.counts[at]! }, () => length)),
}));

/** Sources and licences stand at the head of binPacking.json; every optimum there is proved. */
describe("published cutting-stock instances", () => {
  it.each(instances)("$id: a legal plan, no better than the optimum and within the proved ratio of it", ({ pieces, capacity, optimum }) => {
    const plan = firstFitDecreasing(pieces, capacity);
    expect(plan.flat().sort((a, b) => a - b)).toEqual(pieces.map((_, index) => index));
    for (const stock of plan) expect(stock.reduce((sum, index) => sum + pieces[index]!, 0)).toBeLessThanOrEqual(capacity);
    expect(plan.length).toBeGreaterThanOrEqual(optimum);
    // Dósa 2007: FFD(I) <= 11/9 OPT(I) + 6/9, and no smaller constant holds. From memory.
    expect(9 * plan.length).toBeLessThanOrEqual(11 * optimum + 6);
  });

  it.each(instances)("$id: the bounds are never above the optimum", ({ pieces, capacity, optimum }) => {
    expect(stocksBound(pieces, capacity)).toBeLessThanOrEqual(optimum);
    expect(stocksBound(pieces, capacity)).toBeGreaterThanOrEqual(materialBound(pieces, capacity));
  });

  it("proves first fit optimal, or nearly, where the pieces are mixed (Falkenauer's uniform class)", () => {
    const uniform = instances.filter(({ id }) => id.startsWith("Falkenauer_u"));
    expect(uniform).toHaveLength(6);
    for (const { pieces, capacity, optimum } of uniform) {
      expect(stocksBound(pieces, capacity)).toBe(optimum);
      expect(firstFitDecreasing(pieces, capacity).length).toBeLessThanOrEqual(Math.ceil(optimum * 1.02));
    }
  });

  it("takes 1,939 stocks where 1,883 are enough, and proves 1,873, over all forty (our own count, so that a change is noticed)", () => {
    const sum = (of: (instance: (typeof instances)[number]) => number) => instances.reduce((total, instance) => total + of(instance), 0);
    expect(instances).toHaveLength(40);
    expect(sum(({ optimum }) => optimum)).toBe(1883);
    expect(sum(({ pieces, capacity }) => firstFitDecreasing(pieces, capacity).length)).toBe(1939);
    expect(sum(({ pieces, capacity }) => stocksBound(pieces, capacity))).toBe(1873);
  });

  it("takes 11 stocks for 9 in Johnson's worst case (Johnson, Demers, Ullman, Garey & Graham 1974; from memory)", () => {
    // Halves and quarters a little over and under: 6 of 1/2+e, 6 of 1/4+2e, 6 of 1/4+e, 12 of 1/4-2e, in hundredths with e = 1.
    const pieces = [...Array(6).fill(51), ...Array(6).fill(27), ...Array(6).fill(26), ...Array(12).fill(23)] as number[];
    expect(firstFitDecreasing(pieces, 100)).toHaveLength(11);
    expect(stocksBound(pieces, 100)).toBe(9);
  });
});
