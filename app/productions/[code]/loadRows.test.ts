import { describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
import { maker, staging } from "#lib/planning/fixtures";
import type { LoadCell } from "#lib/planning/stagingPlan";
import { loadRows } from "./loadRows";

const cell = (code: string, week: string, planned: number, free: number): LoadCell => ({
  by: "skill",
  code,
  week: week as PlainDate,
  planned,
  free,
  over: Math.max(0, planned - free),
});

describe("loadRows", () => {
  const load = [
    cell("boned", "2027-03-15", 600, 480),
    cell("net", "2027-03-15", 300, 480),
    cell("net", "2027-03-08", 500, 480),
    { ...cell("A1", "2027-03-08", 999, 1), by: "maker" as const },
  ];

  const plan = { load, staging: staging({ makers: [maker("A2"), maker("A1")] }) };

  it("totals are the sums of what is shown, by skill only", () => {
    const table = loadRows(plan);
    expect(table.weeks).toEqual(["2027-03-08", "2027-03-15"]);
    expect(table.rows.map((row) => [row.code, row.planned, row.free, row.over, row.weeksOver])).toEqual([
      ["net", 800, 960, 20, 1],
      ["boned", 600, 480, 120, 1],
    ]);
    expect([table.planned, table.free, table.over]).toEqual([1400, 1440, 140]);
  });

  it("has a row for each maker with work or hours, in their own order, when asked by maker", () => {
    expect(loadRows(plan, "maker").rows.map((row) => [row.code, row.planned, row.over])).toEqual([["A1", 999, 998]]);
  });

  it("leaves a hole where a skill has neither work nor hours in a week", () => {
    expect(loadRows(plan).rows[1]?.cells[0]).toBeNull();
  });
});
