import { describe, expect, it } from "vitest";
import { checkPlan } from "#lib/levelling/checker/checkPlan";
import { solveOnIslands } from "../../bench/levelling/solveOnIslands";
import { Threads } from "../../bench/levelling/threads";
import rcpsp from "./data/rcpsp.json";
import { instanceOf } from "./instance";

describe("projects levelled on islands", () => {
  it("have the same plan on one thread and on two, legal and within the budget of both", async () => {
    const [one, two] = [new Threads(1), new Threads(2)];
    for (const line of rcpsp.instances.slice(-4)) {
      const { problem, id } = instanceOf(line)!;
      const order = { seed: 3, schedules: 2000, stop: () => false };
      const onOne = (await solveOnIslands(problem, one, order))!;
      expect(onOne, id).toEqual(await solveOnIslands(problem, two, order));
      expect(checkPlan(problem, onOne.plan), id).toEqual([]);
      expect(onOne.schedules, id).toBeLessThanOrEqual(2004);
      expect(onOne.schedules, id).toBeGreaterThan(500);
    }
    await Promise.all([one.end(), two.end()]);
  });
});
