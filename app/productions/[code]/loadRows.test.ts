import { describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
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

  it("totals are the sums of what is shown, by skill only", () => {
    const table = loadRows(load);
    expect(table.weeks).toEqual(["2027-03-08", "2027-03-15"]);
    expect(table.rows.map((row) => [row.skill, row.planned, row.free, row.over, row.weeksOver])).toEqual([
      ["net", 800, 960, 20, 1],
      ["boned", 600, 480, 120, 1],
    ]);
    expect([table.planned, table.free, table.over]).toEqual([1400, 1440, 140]);
  });

  it("leaves a hole where a skill has neither work nor hours in a week", () => {
    expect(loadRows(load).rows[1]?.cells[0]).toBeNull();
  });
});
