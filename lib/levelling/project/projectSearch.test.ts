import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lowerBound } from "./lowerBound";
import { Placer } from "./placer";
import { makeProject, type Project } from "./project";
import { ProjectSearch } from "./projectSearch";

/** Seven tasks on two resources of three; a link never runs backwards. */
const projects: fc.Arbitrary<Project> = fc
  .record({
    tasks: fc.array(
      fc.record({
        duration: fc.integer({ min: 0, max: 6 }),
        amounts: fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 2, maxLength: 2 }),
      }),
      { minLength: 7, maxLength: 7 },
    ),
    links: fc.array(fc.record({ before: fc.integer({ min: 0, max: 6 }), after: fc.integer({ min: 0, max: 6 }) }), { maxLength: 6 }),
  })
  .map(
    ({ tasks, links }) =>
      makeProject(
        tasks,
        [3, 3],
        links.filter(({ before, after }) => before < after),
      )!,
  );

/** The best of all orders that respect precedence: serial generation reaches an optimum from one of them. */
function bestOfAllOrders(project: Project): number {
  const placer = new Placer(project);
  const { first, before } = project.sides[0];
  const start = new Int32Array(project.count);
  const list: number[] = [];
  let best = Number.POSITIVE_INFINITY;
  const extend = (): void => {
    if (list.length === project.count) best = Math.min(best, placer.place(0, Int32Array.from(list), start, 1_000_000));
    for (let task = 0; task < project.count; task++) {
      if (list.includes(task) || before.slice(first[task]!, first[task + 1]!).some((one) => !list.includes(one))) continue;
      list.push(task);
      extend();
      list.pop();
    }
  };
  extend();
  return best;
}

function run(project: Project, seed: number, budget: number): ProjectSearch {
  const search = new ProjectSearch(project, seed, 0, budget);
  while (!search.done) search.round();
  return search;
}

describe("the search of a project", () => {
  it("proves the end that the best of all orders has", () => {
    fc.assert(
      fc.property(projects, (project) => {
        const optimum = bestOfAllOrders(project);
        const search = run(project, 1, Number.POSITIVE_INFINITY);
        expect(search.best.end).toBe(optimum);
        expect(search.lower).toBeLessThanOrEqual(optimum);
        expect(lowerBound(project)).toBeLessThanOrEqual(optimum);
      }),
      { numRuns: 60 },
    );
  });

  it("never bounds a task's way to the end above what the best plan needs", () => {
    fc.assert(
      fc.property(projects, (project) => {
        const optimum = bestOfAllOrders(project);
        for (const { tail } of project.sides) for (const each of tail) expect(each).toBeLessThanOrEqual(optimum);
      }),
      { numRuns: 60 },
    );
  });

  it("finds the same plan again with the same seed", () => {
    fc.assert(
      fc.property(projects, fc.integer(), (project, seed) => {
        expect(run(project, seed, 40).best).toEqual(run(project, seed, 40).best);
      }),
      { numRuns: 40 },
    );
  });

  it("spends no more than a pass over its budget", () => {
    fc.assert(
      fc.property(projects, fc.integer({ min: 1, max: 60 }), (project, budget) => {
        expect(run(project, 1, budget).schedules).toBeLessThanOrEqual(budget + 1);
      }),
      { numRuns: 40 },
    );
  });
});
