import { expect, it } from "vitest";
import { checkPlan } from "#lib/levelling/checker/checkPlan";
import { level } from "#lib/levelling/level";
import { day, garment, operation, staging, wall, work } from "./fixtures";
import { prepareWorks } from "./prepare";
import { withTaken } from "./taken";

const NOTHING = { makers: [], performers: [], rooms: [], machines: [] };

/** One task of three hours from Monday 9:00; another production has the maker from 10:00 to 12:00, or the only ruffler until Tuesday noon. */
const prepared = (machine: string | null) =>
  prepareWorks(
    staging({ machines: [{ code: "ruffler", name: "Ruffler", kind: "ruffler", count: 1 }] }),
    [garment("X 001")],
    [work("X 001", [operation("sew", { minutes: [180, 180, 180], machine })])],
    { today: day("2027-02-01") },
  );
const stretches = (from: ReturnType<typeof prepared>) => {
  const { plan } = level(from.problem, { seed: 1, rounds: 0, stop: () => false });
  expect(checkPlan(from.problem, plan)).toEqual([]);
  return plan.placed[0]!.stretches.map(({ start, end }) => [start, end]);
};

it("work that may pause is put down while another production has its maker", () => {
  const makers = [{ of: "bel", start: wall("2027-02-01", 600), end: wall("2027-02-01", 720), by: "Y" }];
  expect(stretches(prepared(null))).toEqual([[540, 720]]);
  expect(stretches(withTaken(prepared(null), { ...NOTHING, makers }))).toEqual([
    [540, 600],
    [720, 840],
  ]);
});

it("a machine that another production has is waited for", () => {
  const machines = [{ of: "ruffler", start: wall("2027-02-01", 540), end: wall("2027-02-02", 720), by: "Y" }];
  expect(stretches(withTaken(prepared("ruffler"), { ...NOTHING, machines }))).toEqual([[1440 + 720, 1440 + 900]]);
});
