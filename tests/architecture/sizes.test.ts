import { describe, expect, it } from "vitest";
import { sources } from "./sources";

/** Lines at or under which this share of the files lies. */
function quantile(share: number): number {
  const sorted = sources.map(({ lines }) => lines).sort((a, b) => a - b);
  return sorted[Math.ceil(share * sorted.length) - 1] ?? 0;
}

describe("a file can be read at one sitting", () => {
  it("looks at the whole project", () => {
    expect(sources.length).toBeGreaterThan(150);
  });

  it("no file is over 350 lines: split it by idea", () => {
    expect(sources.filter(({ lines }) => lines > 350).map(({ path, lines }) => `${path}: ${lines}`)).toEqual([]);
  });

  it("nine in ten are under 200 lines", () => {
    expect(quantile(0.9)).toBeLessThan(200);
  });

  it("the middle one is under 70 lines", () => {
    expect(quantile(0.5)).toBeLessThan(70);
  });
});
