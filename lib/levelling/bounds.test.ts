import { describe, expect, it } from "vitest";
import { boundsOf } from "./bounds";
import { level } from "./level";
import { follows, tinyMaker, tinyProblem, tinyTask } from "./testing/tinyProblem";

const DAY = 1440;
const due = (node: number, at: number, weight = 1) => ({ node, at, weight, label: "due" });

describe("bounds", () => {
  it("follow the longest chain over nights and lags", () => {
    const problem = tinyProblem({
      nodes: [tinyTask("a/cut", 420), tinyTask("a/sew", 120)],
      precedences: [follows(0, 1, { lag: 60 })],
      dues: [due(1, 1020, 3)],
    });
    expect(boundsOf(problem)).toMatchObject({ finish: DAY + 660, weightedLateness: 3 * (DAY + 660 - 1020) });
  });

  it("count the hours of a skill against everybody who has it, and are met here by the best plan", () => {
    const problem = tinyProblem({
      makers: [tinyMaker("a", [1000, 0]), tinyMaker("b", [500, 0])],
      nodes: ["a", "b", "c"].map((id) => tinyTask(`${id}/sew`, 480)),
      dues: [0, 1, 2].map((node) => due(node, 1020)),
    });
    const bounds = boundsOf(problem);
    // 24 hours of work, 12 hours' worth of it a day: done at the end of the second day.
    expect(bounds.finish).toBe(DAY + 1020);
    expect(bounds.weightedLateness).toBe(DAY);
    expect(bounds.reasons.join(" ")).toMatch(/24 hours ask for sew/);
    expect(level(problem, { seed: 1, rounds: 3, stop: () => false }).measures.finish).toBe(bounds.finish);
  });

  it("tell the least overtime that a plan in time needs", () => {
    const problem = tinyProblem({
      makers: [tinyMaker("a", [1000, 0], 10, true)],
      nodes: [tinyTask("a/sew", 300), tinyTask("b/sew", 210)],
      dues: [due(0, 1080), due(1, 1080)],
    });
    expect(boundsOf(problem).overtimeMinutes).toBe(30);
    expect(level(problem, { seed: 1, rounds: 6, stop: () => false }).measures).toMatchObject({ weightedLateness: 0, overtimeMinutes: 30 });
  });

  it("know no overtime bound where normal hours suffice", () => {
    expect(boundsOf(tinyProblem({ nodes: [tinyTask("a/sew", 60)], dues: [due(0, 1080)] })).overtimeMinutes).toBeNull();
  });

  it("count the minutes of a machine", () => {
    const problem = tinyProblem({
      machines: [{ id: "vat", count: 2, calendar: null }],
      nodes: [1, 2, 3, 4].map((n) => tinyTask(`${n}/dye`, 100, { crew: [], machines: [{ machine: 0, count: 1 }] })),
    });
    expect(boundsOf(problem).finish).toBe(200);
    expect(boundsOf(problem).reasons).toEqual(["The end is no earlier because vat has 400 minutes of work for 2."]);
  });
});
