import { describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
import { applyChanges } from "#lib/editing/applyChanges";
import { changesBetween } from "#lib/editing/changesBetween";
import { level } from "#lib/levelling/level";
import { planStaging } from "#lib/planning/planStaging";
import { edited, smallStaging } from "#lib/staging/fixtures";
import { withAlteration } from "./alteration";
import { answerTo } from "./answer";
import { missingFor } from "./missing";
import { FIGURE_PLACES, nearestPlace } from "./places";
import { fittingsIn, visitsIn } from "./visits";

const staging = smallStaging();
const asked = {
  garment: "MG 001",
  place: "left-shoulder",
  finding: "alter",
  text: "up half an inch",
  skill: null,
  minutes: null,
  askedBy: "Orla Venn",
  askedOn: "2027-02-02" as PlainDate,
} as const;

describe("places of the figure", () => {
  it("have codes of their own, and each is the nearest to itself", () => {
    expect(new Set(FIGURE_PLACES.map(({ code }) => code)).size).toBe(FIGURE_PLACES.length);
    for (const place of FIGURE_PLACES) expect(nearestPlace(place.view, place.x, place.y)).toBe(place);
  });
});

describe("an alteration asked for in a fitting", () => {
  it("becomes work that the rules of an import accept, as long as is usual there", () => {
    const { next, code } = withAlteration(staging, asked);
    const applied = applyChanges(staging, changesBetween(staging, next));
    expect(applied.ok && applied.value.staging.otherWork).toEqual([
      expect.objectContaining({
        code,
        garment: "MG 001",
        title: "Left shoulder or strap: up half an inch",
        skill: "hand",
        minutes: [30, 30, 30],
      }),
    ]);
  });

  it("gets a code of its own each time", () => {
    const once = withAlteration(staging, asked);
    expect(withAlteration(once.next, asked).code).not.toBe(once.code);
  });
});

describe("answers", () => {
  it("are those of the same garment, fitting and performer, the newest first", () => {
    const at = { garment: "MG 001", fitting: "first", performer: "ines" };
    const answers = [
      { ...at, answer: "done" },
      { ...at, answer: "again" },
      { ...at, performer: "ruth", answer: "did not come" },
    ];
    expect(answerTo(answers, at)).toMatchObject({ answer: "done" });
    expect(answerTo(answers, { ...at, fitting: "final" })).toBeNull();
  });
});

const planned = () => {
  const fitter = edited("makers.csv", "hand=80%", "hand=80%; fit=100%");
  const fitted = smallStaging({ "constructions/skirt.json": JSON.stringify(withFitting()), ...fitter });
  return planStaging(fitted, {
    today: "2027-01-11" as PlainDate,
    level: (problem) => level(problem, { seed: 1, rounds: 0, stop: () => false }),
  });
};

describe("the visits of a plan", () => {
  it("hold every placed fitting once", async () => {
    const plan = await planned();
    const placed = fittingsIn(plan).filter(({ start }) => start !== null);
    expect(placed.length).toBeGreaterThan(0);
    expect(
      visitsIn(plan)
        .flatMap(({ fittings }) => fittings.map(({ node }) => node))
        .sort(),
    ).toEqual(placed.map(({ node }) => node).sort());
  });

  it("wait for the work before them and for its goods, and for nothing once that is past", async () => {
    const plan = await planned();
    const [fitting] = fittingsIn(plan);
    const goods = [{ node: 0, day: "2027-02-01" as PlainDate, text: "Net: ordered" }];
    const before = plan.problem.precedences.filter(({ after }) => after === fitting!.node).map(({ before: node }) => node);
    const missing = missingFor({ deliveries: goods.map((one) => ({ ...one, node: before[0]! })) }, plan, 0)(fitting!.node);
    expect(missing.work.map(({ name }) => name)).toEqual(["Mount"]);
    expect(missing.goods).toEqual([{ text: "Net: ordered", day: "2027-02-01" }]);
    expect(missingFor({ deliveries: [] }, plan, Number.MAX_SAFE_INTEGER)(fitting!.node)).toEqual({ work: [], goods: [] });
  });
});

function withFitting() {
  const [skirt] = smallStaging().constructions;
  const first = {
    code: "first",
    kind: "first",
    name: "First fitting",
    minutes: 30,
    waitsFor: [{ on: "mount", lagMinutes: 0, lagKind: "elapsed" }],
  };
  return { ...skirt!, fittings: [{ ...first, when: "", sources: ["build", "alter"] }] };
}
