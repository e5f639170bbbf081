import { describe, expect, it } from "vitest";
import { level } from "./level";
import type { Cause, LevellingProblem } from "./problem";
import { follows, officeHours, tinyFitting, tinyMaker, tinyProblem, tinyTask } from "./testing/tinyProblem";

const options = { seed: 1, rounds: 2, stop: () => false };
const due = (node: number, at: number) => ({ node, at, weight: 1, label: "due" });
const finishOf = (problem: LevellingProblem, node: number): number => level(problem, options).plan.placed[node]!.end;

/** Minutes of the only late due by cause, and the links' two ends. */
function causes(problem: LevellingProblem): { by: Partial<Record<Cause, number>>; start: number; end: number } {
  const [chain] = level(problem, options).late;
  const by: Partial<Record<Cause, number>> = {};
  for (const { cause, start, end } of chain!.links) by[cause] = (by[cause] ?? 0) + end - start;
  return { by, start: chain!.links[0]!.start, end: chain!.links.at(-1)!.end };
}

describe("explain", () => {
  it("names a late delivery, and without it the work ends earlier", () => {
    const made = (release: number) =>
      tinyProblem({
        nodes: [tinyTask("a/cut", 60), tinyTask("a/sew", 120, { release })],
        precedences: [follows(0, 1)],
        dues: [due(1, 700)],
      });
    const late = made(2000);
    expect(causes(late)).toEqual({ by: { delivery: 2000, work: 120 }, start: 0, end: 2120 });
    expect(finishOf(made(0), 1)).toBeLessThan(finishOf(late, 1));
  });

  it("names the maker who is busy, and without the other work it ends earlier", () => {
    const nodes = [tinyTask("a/sew", 480), tinyTask("b/sew", 480)];
    const late = tinyProblem({ nodes, dues: [due(0, 1020), { ...due(1, 1021), weight: 1 }] });
    const { by } = causes(late);
    expect(by["maker busy"]).toBe(480);
    expect(by.work).toBe(480);
    const alone = tinyProblem({ nodes: nodes.slice(1), dues: [due(0, 1021)] });
    expect(finishOf(alone, 0)).toBeLessThan(finishOf(late, 1));
  });

  it("names the machine, and with one more the work ends earlier", () => {
    const made = (count: number) =>
      tinyProblem({
        makers: [tinyMaker("a", [1000, 0]), tinyMaker("b", [1000, 0])],
        machines: [{ id: "overlock", count, calendar: null }],
        nodes: ["a/sew", "b/sew"].map((id) => tinyTask(id, 240, { machines: [{ machine: 0, count: 1 }] })),
        dues: [due(0, 780), due(1, 781)],
      });
    expect(causes(made(1)).by.machine).toBe(240);
    expect(finishOf(made(2), 1)).toBeLessThan(finishOf(made(1), 1));
  });

  it("names the fitting that waits for the performer, and with a free performer the work ends earlier", () => {
    const made = (free: LevellingProblem["performers"][number]["free"]) =>
      tinyProblem({
        performers: [{ id: "dancer", free }],
        nodes: [tinyTask("a/cut", 60), tinyFitting("a/fit"), tinyTask("a/sew", 60)],
        precedences: [follows(0, 1), follows(1, 2)],
        dues: [due(2, 700)],
      });
    const late = made([{ start: 900, end: 960 }]);
    expect(causes(late)).toEqual({ by: { calendar: 540, work: 120, fitting: 315 }, start: 0, end: 975 });
    expect(finishOf(made(officeHours(1)), 2)).toBeLessThan(finishOf(late, 2));
  });

  it("names the lag, and without it the work ends earlier", () => {
    const made = (lag: number) =>
      tinyProblem({ nodes: [tinyTask("a/dye", 60), tinyTask("a/sew", 60)], precedences: [follows(0, 1, { lag })], dues: [due(1, 661)] });
    expect(causes(made(120)).by.lag).toBe(120);
    expect(finishOf(made(0), 1)).toBeLessThan(finishOf(made(120), 1));
  });

  it("names the nights of a task that goes over days", () => {
    const late = tinyProblem({ nodes: [tinyTask("a/cut", 960)], dues: [due(0, 1100)] });
    expect(causes(late)).toEqual({ by: { calendar: 540 + 960, work: 960 }, start: 0, end: 1440 + 1020 });
  });

  it("names the work of another group as a predecessor", () => {
    const late = tinyProblem({
      nodes: [tinyTask("prototype/sew", 240), tinyTask("a/sew", 60)],
      precedences: [follows(0, 1)],
      dues: [due(1, 600)],
    });
    expect(causes(late).by).toEqual({ calendar: 540, predecessor: 240, work: 60 });
  });
});
