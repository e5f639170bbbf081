import { describe, expect, it } from "vitest";
import { boundsOf } from "#lib/levelling/bounds";
import { level } from "#lib/levelling/level";
import { bareProblem } from "./bareProblem";
import examples from "./data/pert.json";

interface Example {
  readonly source: string;
  readonly tasks: Readonly<Record<string, { readonly t: readonly number[]; readonly p: readonly string[] }>>;
  readonly recomputed: { readonly duration: number; readonly critical: readonly string[] };
}

/** A day as so many minutes: the sixths of a three-point mean stay whole. */
const DAY = 6;

/** Expected times (low + 4 likely + high) / 6; one node more, for the end of the project. */
function projectOf({ tasks }: Example): { problem: ReturnType<typeof bareProblem>; names: readonly string[] } {
  const names = Object.keys(tasks);
  const end = names.length;
  const minutes = names.map((name) => {
    const [low, likely, high] = tasks[name]!.t;
    return ((low! + 4 * likely! + high!) / 6) * DAY;
  });
  const after = (name: string): number[] => names.flatMap((other, i) => (tasks[other]!.p.includes(name) ? [i] : []));
  const problem = bareProblem({
    skills: [],
    makers: [],
    machines: [],
    tasks: [...minutes, 0].map((each) => ({ minutes: each, crew: [], machines: [] })),
    successors: [...names.map((name) => (after(name).length > 0 ? after(name) : [end])), []],
    dues: [{ node: end, at: 0, weight: 1, label: "end" }],
  });
  return { problem, names };
}

describe("critical path of textbook projects", () => {
  for (const [name, example] of Object.entries(examples as Readonly<Record<string, Example>>)) {
    it(`${name}: bound and plan are both the published length (${example.source})`, () => {
      const { problem } = projectOf(example);
      const { measures } = level(problem, { seed: 1, rounds: 0, stop: () => false });
      expect(boundsOf(problem).finish / DAY).toBeCloseTo(example.recomputed.duration, 3);
      expect(boundsOf(problem).weightedLateness).toBe(measures.weightedLateness);
      expect(measures.finish / DAY).toBeCloseTo(example.recomputed.duration, 3);
    });

    it(`${name}: the links of the late end run along the published critical path`, () => {
      const { problem, names } = projectOf(example);
      const { late } = level(problem, { seed: 1, rounds: 0, stop: () => false });
      const links = late[0]!.links;
      expect(links.map(({ node }) => names[node])).toEqual(example.recomputed.critical);
      expect(links.every(({ cause }) => cause === "predecessor")).toBe(true);
    });
  }
});
