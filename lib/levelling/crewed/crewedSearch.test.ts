import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkPlan } from "../checker/checkPlan";
import { level } from "../level";
import type { LevellingProblem } from "../problem";
import { follows, tinyProblem, tinyTask } from "../testing/tinyProblem";
import { crewedProjectOf } from "./crewedProject";

const LENGTH = 1000;

/** Six tasks of one to three workers out of four, each with some of three skills; the last waits for all. */
const projects = fc
  .record({
    skills: fc.array(fc.integer({ min: 1, max: 7 }), { minLength: 3, maxLength: 4 }),
    tasks: fc.array(fc.record({ minutes: fc.integer({ min: 1, max: 5 }), asked: fc.array(fc.nat(1), { minLength: 3, maxLength: 3 }) }), {
      minLength: 3,
      maxLength: 6,
    }),
    links: fc.array(fc.tuple(fc.nat(5), fc.nat(5)), { maxLength: 5 }),
  })
  .map(({ skills, tasks, links }): LevellingProblem => {
    const calendar = [{ start: 0, end: LENGTH, speed: 1000, overtime: false }];
    return tinyProblem({
      skills: ["cut", "sew", "dye"],
      makers: skills.map((set, i) => ({
        id: `worker ${i}`,
        pace: [0, 1, 2].map((skill) => ((set >> skill) & 1 ? 1000 : 0)),
        calendar,
        costPerHour: 0,
        overtimeCostPerHour: 0,
      })),
      rooms: [],
      performers: [],
      nodes: [
        ...tasks.map(({ minutes, asked }, i) =>
          tinyTask(`${i}`, minutes, {
            pauses: false,
            crew: asked.flatMap((count, skill) => (count > 0 && skills.some((set) => (set >> skill) & 1) ? [{ skill, count }] : [])),
          }),
        ),
        tinyTask("all", 0, { crew: [] }),
      ],
      precedences: [
        ...links.filter(([a, b]) => a < b && b < tasks.length).map(([a, b]) => follows(a, b)),
        ...tasks.map((_, i) => follows(i, tasks.length)),
      ],
      dues: [{ node: tasks.length, at: 0, weight: 1, label: "end" }],
      horizon: LENGTH,
      week: { minutes: LENGTH, offset: 0 },
    });
  })
  .filter((problem) => crewedProjectOf(problem) !== null);

/** The earliest end of all plans: every order of the tasks, and for each every crew that is free soonest. */
function leastEnd({ nodes, makers, precedences }: LevellingProblem): number {
  const count = nodes.length - 1;
  let best = Number.POSITIVE_INFINITY;
  const ends = new Array<number>(count).fill(-1);
  const free = makers.map(() => 0);
  const place = (done: number, latest: number, before: number): void => {
    if (latest >= best) return;
    if (done === count) {
      best = latest;
      return;
    }
    for (let task = 0; task < count; task++) {
      const preds = precedences.filter(({ after }) => after === task).map(({ before: one }) => one);
      if (ends[task]! >= 0 || preds.some((one) => ends[one]! < 0)) continue;
      const node = nodes[task]!;
      const seats = node.kind === "task" ? node.crew.map(({ skill }) => skill) : [];
      const ready = preds.reduce((most, one) => Math.max(most, ends[one]!), before);
      eachCrew(seats, 0, [], (crew) => {
        const start = crew.reduce((most, maker) => Math.max(most, free[maker]!), ready);
        const kept = crew.map((maker) => free[maker]!);
        ends[task] = start + node.minutes;
        for (const maker of crew) free[maker] = ends[task]!;
        place(done + 1, Math.max(latest, ends[task]!), start);
        crew.forEach((maker, i) => {
          free[maker] = kept[i]!;
        });
        ends[task] = -1;
      });
    }
  };
  const eachCrew = (seats: readonly number[], at: number, crew: readonly number[], visit: (crew: readonly number[]) => void): void => {
    if (at === seats.length) visit(crew);
    else
      makers.forEach(({ pace }, maker) => {
        if (pace[seats[at]!]! > 0 && !crew.includes(maker)) eachCrew(seats, at + 1, [...crew, maker], visit);
      });
  };
  place(0, 0, 0);
  return best;
}

describe("the search of a multi-skill project", () => {
  it("ends in the best of all plans, and proves it", () => {
    fc.assert(
      fc.property(projects, (problem) => {
        const { plan, measures, bounds } = level(problem, { seed: 1, rounds: 200, stop: () => false });
        expect(checkPlan(problem, plan)).toEqual([]);
        expect(measures.finish).toBe(leastEnd(problem));
        expect(bounds.finish).toBe(measures.finish);
      }),
      { numRuns: 60 },
    );
  });
});
