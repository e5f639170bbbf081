import { describe, expect, it } from "vitest";
import { level } from "#lib/levelling/level";
import type { LevellingProblem } from "#lib/levelling/problem";
import { levelInThread } from "./levelInThread";
import { startThread } from "./startThread";

const task = (at: number) => ({
  kind: "task" as const,
  id: `task ${at}`,
  group: `garment ${at}`,
  minutes: 60 + 15 * at,
  crew: [{ skill: 0, count: 1 }],
  machines: [],
  release: 0,
  pauses: true,
  straining: null,
  pin: null,
});

/** One maker, eight tasks, all due too early: there is always something left to try. */
const problem: LevellingProblem = {
  skills: ["net"],
  makers: [
    {
      id: "maker",
      pace: [1000],
      calendar: [{ start: 0, end: 2_000, speed: 1000, overtime: false }],
      costPerHour: 1,
      overtimeCostPerHour: 2,
    },
  ],
  machines: [],
  rooms: [],
  performers: [],
  nodes: [0, 1, 2, 3, 4, 5, 6, 7].map(task),
  precedences: [],
  dues: [0, 1, 2, 3, 4, 5, 6, 7].map((node) => ({ node, at: 60, weight: 1 + (node % 3), label: `garment ${node}` })),
  horizon: 10_000,
  week: { minutes: 10_080, offset: 0 },
  current: null,
};

/** Two makers with nights and more work than they can do in time: every island goes on searching. */
const workroom: LevellingProblem = {
  ...problem,
  makers: ["first", "second"].map((id) => ({
    ...problem.makers[0]!,
    id,
    calendar: [0, 1, 2, 3, 4].map((day) => ({ start: 1440 * day + 540, end: 1440 * day + 780, speed: 1000, overtime: false })),
  })),
  dues: problem.dues.map((due) => ({ ...due, at: 700 })),
};

describe("levelInThread", () => {
  it("gives what the search gives when called here: same seed and rounds, same answer", async () => {
    const there = await levelInThread(problem, { seed: 7, rounds: 5, seconds: 60 }, startThread);
    expect(there).toEqual(level(problem, { seed: 7, rounds: 5, stop: () => false }));
  });

  it("gives the same answer in two threads as in one, after an exchange too", async () => {
    const kept = { seed: 3, rounds: 9, seconds: 60 };
    const one = await levelInThread(workroom, { ...kept, threads: 1 }, startThread);
    expect(await levelInThread(workroom, { ...kept, threads: 2 }, startThread)).toEqual(one);
    expect(one.rounds).toBe(9);
  });

  it("ends on time with an answer, and tells its progress meanwhile", async () => {
    const told: number[] = [];
    const answer = await levelInThread(
      problem,
      { seed: 1, rounds: 1e9, seconds: 0.5, onProgress: (round) => told.push(round) },
      startThread,
    );
    expect(answer.plan.placed.every((place) => place !== null)).toBe(true);
    expect(answer.rounds).toBeLessThan(1e9);
    expect(told.length).toBeGreaterThan(0);
  });

  it("ends at once, with a plan all the same, when it was told to stop before", async () => {
    const answer = await levelInThread(problem, { seed: 1, rounds: 1e9, seconds: 60, signal: AbortSignal.abort() }, startThread);
    expect(answer.plan.placed.every((place) => place !== null)).toBe(true);
  });

  it("passes a defect on instead of waiting for ever", async () => {
    await expect(levelInThread({} as LevellingProblem, { seed: 1, rounds: 1, seconds: 60 }, startThread)).rejects.toThrow();
  });
});
