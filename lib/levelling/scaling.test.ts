import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { level } from "./level";
import type { LevellingProblem } from "./problem";
import { follows, tinyProblem, tinyTask } from "./testing/tinyProblem";

const LENGTH = 2000;
const given = fc.record({
  minutes: fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 3, maxLength: 7 }),
  pair: fc.nat(6),
  times: fc.integer({ min: 2, max: 9 }),
});

/** Two makers who never go home, tasks one or both of them do, and the end of all due at once; every time so many times as long. */
function problemOf(minutes: readonly number[], pair: number, pace: number, times: number): LevellingProblem {
  const calendar = [{ start: 0, end: LENGTH * times, speed: 1000, overtime: false }];
  const maker = (id: string, own: readonly number[]) => ({ id, pace: own, calendar, costPerHour: 0, overtimeCostPerHour: 0 });
  return tinyProblem({
    makers: [maker("first", [pace, 0]), maker("second", [1000, 1000])],
    rooms: [],
    performers: [],
    nodes: [
      ...minutes.map((length, i) =>
        tinyTask(`${i}`, length * times, {
          pauses: false,
          crew: i === pair ? [0, 1].map((skill) => ({ skill, count: 1 })) : [{ skill: i % 2, count: 1 }],
        }),
      ),
      tinyTask("all", 0, { crew: [] }),
    ],
    precedences: [...minutes.slice(2).map((_, i) => follows(i, i + 2)), ...minutes.map((_, i) => follows(i, minutes.length))],
    dues: [{ node: minutes.length, at: 0, weight: 1, label: "end" }],
    horizon: LENGTH * times,
    week: { minutes: LENGTH * times, offset: 0 },
  });
}

const startsOf = (problem: LevellingProblem, rounds: number, times: number): number[] =>
  level(problem, { seed: 1, rounds, stop: () => false }).plan.placed.map((placement) => placement!.start * times);

describe("without calendars and steps, scaling time scales the plan", () => {
  it("of everybody at one pace, searched to the end", () => {
    fc.assert(
      fc.property(given, ({ minutes, pair, times }) => {
        expect(startsOf(problemOf(minutes, pair, 1000, times), 20, 1)).toEqual(startsOf(problemOf(minutes, pair, 1000, 1), 20, times));
      }),
      { numRuns: 20 },
    );
  });

  it("of makers at different paces, by the plain rule", () => {
    fc.assert(
      fc.property(given, ({ minutes, pair, times }) => {
        expect(startsOf(problemOf(minutes, pair, 500, times), 0, 1)).toEqual(startsOf(problemOf(minutes, pair, 500, 1), 0, times));
      }),
      { numRuns: 40 },
    );
  });
});
