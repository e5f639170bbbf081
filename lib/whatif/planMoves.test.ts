import { describe, expect, it } from "vitest";
import { checkPlan } from "#lib/levelling/checker/checkPlan";
import { level } from "#lib/levelling/level";
import { assemble } from "#lib/planning/assemble";
import { day, garment, operation, staging, work } from "#lib/planning/fixtures";
import { withHandPins } from "#lib/planning/handPins";
import { prepareWorks } from "#lib/planning/prepare";
import { planMoves } from "./planMoves";

const cut = operation("cut", { skill: "net" });
const sew = operation("sew", { skill: "net", waitsFor: [{ on: "cut", lagMinutes: 0, lagKind: "elapsed" }] });
const numbers = ["X 1", "X 2", "X 3"];
const prepared = prepareWorks(
  staging(),
  numbers.map((number) => garment(number)),
  numbers.map((number) => work(number, [cut, sew])),
  { today: day("2027-02-01") },
);
const levelled = (one: typeof prepared) => {
  const answer = level(one.problem, { seed: 1, rounds: 0, stop: () => false });
  expect(checkPlan(one.problem, answer.plan)).toEqual([]);
  return assemble(one, answer);
};
const before = levelled(prepared);

describe("what a plan has become in another", () => {
  it("is nothing, of the same plan", () => {
    expect(planMoves(before, before)).toMatchObject({ moved: [], sooner: [], later: [] });
  });

  it("names the task that was moved by hand with both its places, and each piece of work once", () => {
    const task = before.tasks.filter(({ start }) => start !== null).sort((x, y) => x.start! - y.start!)[0]!;
    const start = task.start! + 1440;
    const moved = withHandPins({ ...prepared, problem: { ...prepared.problem, current: before.answer.plan } }, [
      { key: task.key, makers: [task.maker!], room: null, start },
    ]);
    const after = levelled(moved);
    const moves = planMoves(before, after);
    expect(moves.moved.find(({ key }) => key === task.key)).toMatchObject({
      before: { who: task.maker, start: task.start },
      after: { who: task.maker, start },
    });
    expect(moves.later.map(({ garment }) => garment)).toEqual(task.garments);
    expect(moves.moved.length + moves.stayed).toBe(before.tasks.length + before.fittings.length);
    expect(moves.moved.length).toBeLessThan(moves.stayed);
  });
});
