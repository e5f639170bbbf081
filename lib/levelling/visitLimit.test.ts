import { describe, expect, it } from "vitest";
import { checkPlan } from "./checker/checkPlan";
import { level } from "./level";
import type { EngineFitting, LevellingProblem } from "./problem";

const DAY = 1440;
const WEEK = 7 * DAY;
const days = (from: number, to: number) => Array.from({ length: 14 }, (_, day) => ({ start: day * DAY + from, end: day * DAY + to }));

const fitting = (id: string, release: number): EngineFitting => ({
  kind: "fitting",
  id,
  group: id,
  performer: 0,
  minutes: 30,
  fitterSkill: 0,
  release,
  step: 15,
  pin: null,
});

/** Four fittings become ready on four days of the first week; the performer is free for an hour and a half each afternoon, for two weeks. */
const problem = (visitsAWeek?: number): LevellingProblem => ({
  skills: ["fit"],
  makers: [
    {
      id: "fitter",
      pace: [1000],
      calendar: days(540, 1080).map((one) => ({ ...one, speed: 1000, overtime: false })),
      costPerHour: 1,
      overtimeCostPerHour: 1,
    },
  ],
  machines: [],
  rooms: [{ id: "room", count: 1, free: days(540, 1080) }],
  performers: [{ id: "dancer", free: days(900, 990), ...(visitsAWeek === undefined ? {} : { visitsAWeek }) }],
  nodes: [0, 1, 2, 3].map((day) => fitting(`fitting ${day}`, day * DAY)),
  precedences: [],
  dues: [0, 1, 2, 3].map((node) => ({ node, at: 0, weight: 1, label: "" })),
  horizon: 14 * DAY,
  week: { minutes: WEEK, offset: 0 },
  current: null,
});

const planned = (given: LevellingProblem, rounds: number) => {
  const { plan } = level(given, { seed: 1, rounds, stop: () => false });
  expect(checkPlan(given, plan)).toEqual([]);
  expect(plan.unplaced).toEqual([]);
  return plan;
};
const visitsByWeek = (given: LevellingProblem, rounds: number) => {
  const weeks = [0, 0];
  for (const { start } of planned(given, rounds).visits) weeks[Math.floor(start / WEEK)]!++;
  return weeks;
};

describe("visits per week", () => {
  it("without a limit each fitting is a visit of its day", () => {
    expect(visitsByWeek(problem(), 0)).toEqual([4, 0]);
  });

  it("with a limit of three the fourth waits for the next week or shares a visit", () => {
    for (const rounds of [0, 1, 5]) expect(visitsByWeek(problem(3), rounds)[0]).toBeLessThanOrEqual(3);
  });

  it("with a limit of one the first has its day, and those that are not ready then share one of the next week", () => {
    const { placed } = planned(problem(1), 0);
    expect(placed.map((one) => Math.floor(one!.start / WEEK))).toEqual([0, 1, 1, 1]);
  });
});
