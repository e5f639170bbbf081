import { describe, expect, it } from "vitest";
import { threePointMean, threePointVariance } from "#lib/labour/threePoint";
import published from "./pert.json";

type Three = readonly [number, number, number];
interface Network {
  readonly tasks: Readonly<Record<string, { readonly t: readonly number[] }>>;
  readonly recomputed: { readonly critical: readonly string[] };
}

/** Sum over the critical path that the source names. */
const alongPath = ({ tasks, recomputed }: Network, of: (three: Three) => number): number =>
  recomputed.critical.reduce((sum, code) => sum + of(tasks[code]!.t as unknown as Three), 0);

describe("three-point estimates", () => {
  it("give 54 days with a standard deviation of 6.40 (table found, result recalled: see pert.json, chase)", () => {
    expect(alongPath(published.chase, threePointMean)).toBeCloseTo(published.chase.published.duration, 9);
    expect(Math.sqrt(alongPath(published.chase, threePointVariance))).toBeCloseTo(published.chase.published.sd, 2);
  });

  it("give 15 weeks with a variance of 3.11 (recalled from memory: see pert.json, milwaukee)", () => {
    expect(alongPath(published.milwaukee, threePointMean)).toBeCloseTo(published.milwaukee.published.duration, 9);
    expect(alongPath(published.milwaukee, threePointVariance)).toBeCloseTo(published.milwaukee.published.variance, 2);
  });

  it("give 73 with each time rounded (found: see pert.json, coursehero)", () => {
    expect(alongPath(published.coursehero, (three) => Math.round(threePointMean(three)))).toBe(
      published.coursehero.published.durationRounded,
    );
  });
});
