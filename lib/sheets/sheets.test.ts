import { describe, expect, it } from "vitest";
import { level } from "#lib/levelling/level";
import { assemble } from "#lib/planning/assemble";
import { day, fitting, garment, operation, set, staging, work } from "#lib/planning/fixtures";
import { prepareWorks } from "#lib/planning/prepare";
import { sheetsOf } from "./sheets";
import { summaryJson } from "./summaryJson";

const after = (on: string) => [{ on, lagMinutes: 0, lagKind: "elapsed" as const }];
const members = [1, 2].map((ordinal) => garment(`X ${ordinal}`, { name: `Skirt ${ordinal}`, set: "reeds", ordinal }));
const skirt = (number: string) => ({
  ...work(
    number,
    [
      operation("cut", { minutes: [80, 100, 120], setup: [20, 30, 40], batch: true, arithmetic: "100 min" }),
      operation("sew", { minutes: [200, 240, 300], waitsFor: [{ on: "cut", lagMinutes: 30, lagKind: "elapsed" }] }),
    ],
    [fitting("try", { waitsFor: after("sew") })],
  ),
  needs: [
    {
      garment: number,
      role: "hook",
      label: { uk: "Hooks", us: "Hooks" },
      material: "hook",
      measure: "count" as const,
      quantity: 12,
      cuts: [],
      oneLotSet: null,
      operation: "sew",
      arithmetic: "12 hooks",
    },
  ],
});
const made = () => {
  const with_ = staging({
    sets: [set("reeds")],
    materials: [
      {
        code: "hook",
        name: "Hooks",
        kind: "hook",
        measure: "count",
        colour: "silver",
        width: null,
        cuttable: null,
        shrinkage: 0,
        spare: 0,
        kerf: 0,
        keep: null,
        grain: "fixed",
      },
    ],
    offers: [
      {
        ...{ material: "hook", supplier: "Busk", pack: 10, minimumPacks: 1, prices: [{ from: 1, price: 150 }] },
        ...{ leadDays: 0, inspectionDays: 0, breaks: "all", orderCost: 0 },
      },
    ],
  });
  const prepared = prepareWorks(
    with_,
    members,
    members.map(({ number }) => skirt(number)),
    { today: day("2027-02-01") },
  );
  return assemble(prepared, level(prepared.problem, { seed: 1, rounds: 0, stop: () => false }));
};
/** A row as heading: cell. */
const row = (name: string, at: number) => {
  const { headings, rows } = sheetsOf(made()).find((sheet) => sheet.name === name)!;
  return Object.fromEntries(headings.map((heading, column) => [heading, rows[at]![column]]));
};

describe("the tables of a plan", () => {
  it("have as many cells in each row as headings, all of them text", () => {
    for (const { headings, rows } of sheetsOf(made()))
      for (const cells of rows) expect([cells.length, cells.every((cell) => typeof cell === "string")]).toEqual([headings.length, true]);
  });

  it("list every garment's tasks with low, likely and high minutes, and the batch they are planned as", () => {
    expect(row("tasks", 3)).toMatchObject({
      garment: "X 2",
      name: "Skirt 2",
      operation: "sew",
      low_min: "200",
      likely_min: "240",
      high_min: "300",
    });
    expect(row("tasks", 3)).toMatchObject({ waits_for: "cut + 30 min", planned_as: "X 2/sew" });
    expect(row("tasks", 2)).toMatchObject({ operation: "cut", planned_as: "X-1+1/cut" });
  });

  it("tell the plan by start", () => {
    expect(row("plan", 0)).toMatchObject({
      start: "2027-02-01 09:00",
      end: "2027-02-01 11:50",
      maker: "bel",
      garments: "X 1; X 2",
      standard_min: "170",
      overtime_min: "0",
    });
  });

  it("call performers to visits", () => {
    expect(row("fittings", 0)).toMatchObject({ visit: "1", performer: "mira", fitter: "bel", room: "room", minutes: "30" });
  });

  it("give each line of the purchase list its sum, its dates and the garments that need it", () => {
    expect(row("purchase", 0)).toMatchObject({
      supplier: "Busk",
      material: "hook",
      needed: "24",
      to_buy: "24",
      packs: "3",
      cost_GBP: "4.50",
      needed_by: "2027-02-01",
      order_by: "2027-02-01",
      garments: "X 1: 12; X 2: 12",
    });
  });

  it("come with a summary whose figures are the plan's", () => {
    const plan = made();
    expect(summaryJson(plan, "1.2.3")).toMatchObject({
      garments: 2,
      tasks: 3,
      minutesBySkill: { net: 650, fit: 60 },
      materialCost: 450,
      lateGarments: 0,
      unplaced: 0,
      versions: { tarlatan: "1.2.3", constructions: { skirt: [1] } },
    });
  });
});
