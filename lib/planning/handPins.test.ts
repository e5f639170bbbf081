import { describe, expect, it } from "vitest";
import { checkPlan } from "#lib/levelling/checker/checkPlan";
import { level } from "#lib/levelling/level";
import { day, garment, maker, operation, staging, wall, work } from "./fixtures";
import { withHandPins } from "./handPins";
import { prepareWorks } from "./prepare";
import { storePlan } from "./restore";

const sew = operation("sew", { minutes: [60, 60, 60], skill: "net" });
const two = { ...staging(), makers: [maker("anna"), maker("bryn")] };
const prepared = prepareWorks(two, [garment("X 1")], [work("X 1", [sew], [])], { today: day("2027-02-01") });
const levelled = (pinned: typeof prepared) => {
  const answer = level(pinned.problem, { seed: 1, rounds: 2, stop: () => false });
  expect(checkPlan(pinned.problem, answer.plan)).toEqual([]);
  return storePlan(pinned, answer, 0).rows.find(({ key }) => key === "X 1/sew")!;
};
const pin = { key: "X 1/sew", makers: ["bryn"], room: null, start: wall("2027-02-03", 10 * 60) };

describe("work put in its place by hand", () => {
  it("stays with its maker at its time, however the rest is levelled", () => {
    expect(levelled(prepared).start).not.toBe(pin.start);
    expect(levelled(withHandPins(prepared, [pin]))).toMatchObject({ start: pin.start, makers: [{ maker: "bryn" }] });
  });

  it("is free again when its maker has gone, or it is no longer there", () => {
    expect(
      withHandPins(prepared, [
        { ...pin, makers: ["nobody"] },
        { ...pin, key: "X 9/sew" },
      ]).problem.nodes,
    ).toEqual(prepared.problem.nodes);
  });
});
