import { describe, expect, it } from "vitest";
import { level } from "#lib/levelling/level";
import { day, fitting, garment, operation, staging, work } from "./fixtures";
import { prepareWorks } from "./prepare";
import { restorePlan, storePlan } from "./restore";

const after = (on: string) => [{ on, lagMinutes: 0, lagKind: "elapsed" as const }];
const skirt = (...codes: readonly string[]) =>
  work(
    "X 1",
    codes.map((code, at) => operation(code, { minutes: [1, 500, 600], waitsFor: at === 0 ? [] : after(codes[at - 1]!) })),
    [fitting("try", { waitsFor: after(codes[0]!) })],
  );
const prepared = (...codes: readonly string[]) =>
  prepareWorks(staging(), [garment("X 1")], [skirt(...codes)], { today: day("2027-02-01") });

describe("a kept plan", () => {
  const first = prepared("cut", "sew");
  const answer = level(first.problem, { seed: 1, rounds: 0, stop: () => false });
  const stored = storePlan(first, answer, 7);

  it("reads back as it was", () => {
    expect(restorePlan(first, JSON.parse(JSON.stringify(stored)))).toEqual(answer);
  });

  it("leaves new work without a place until it is levelled again", () => {
    const more = prepared("cut", "sew", "hem");
    const { plan } = restorePlan(more, stored);
    const hem = more.nodes.findIndex(({ key }) => key === "X 1/hem");
    expect(plan.unplaced).toEqual([{ node: hem, reason: "not in the kept plan", detail: "" }]);
    expect(plan.placed[0]).toEqual(answer.plan.placed[0]);
  });

  it("keeps its past when it is read on a later day", () => {
    const later = prepareWorks(staging(), [garment("X 1")], [skirt("cut", "sew")], { today: day("2027-02-05") });
    expect(restorePlan(later, stored).plan).toEqual(answer.plan);
  });

  it("forgets work that is no longer needed and visits whose people have gone", () => {
    expect(restorePlan(prepared("cut"), stored).plan.unplaced).toEqual([]);
    const gone = { ...first, problem: { ...first.problem, rooms: [] } };
    const { plan } = restorePlan(gone, stored);
    expect(plan.visits).toEqual([]);
    expect(plan.unplaced.map(({ node }) => first.nodes[node]!.key)).toEqual(["X 1/try"]);
  });
});
