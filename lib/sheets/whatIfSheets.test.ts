import { beforeAll, describe, expect, it } from "vitest";
import { versionMeant } from "#lib/constructions/versions";
import { planStaging } from "#lib/planning/planStaging";
import { smallStaging } from "#lib/staging/fixtures";
import { compareStagingPlans } from "#lib/whatif/comparePlans";
import { compareSources } from "#lib/whatif/compareSources";
import { designsAlone, PLAINLY } from "#lib/whatif/fixtures";
import { versionEffect } from "#lib/whatif/versionEffect";
import { comparisonSheets } from "./comparisonSheets";
import type { Sheet } from "./sheet";
import { sourcesSheet } from "./sourcesSheet";
import { versionSheets } from "./versionSheets";

const staging = smallStaging();
const skirt = versionMeant(staging.constructions, "skirt", null)!;
const more = {
  ...skirt,
  version: 2,
  operations: skirt.operations.map((one) => ({ ...one, setupMinutes: [40, 90, 120] as const })),
  needs: skirt.needs.map((need) => ({ ...need, formula: "19 in * layers" })),
};

const sheets = new Map<string, Sheet>();
beforeAll(async () => {
  const after = await planStaging(staging, PLAINLY);
  const compared = comparisonSheets(compareStagingPlans(await planStaging(designsAlone(staging), PLAINLY), after), after);
  for (const sheet of compared) sheets.set(`compared ${sheet.name}`, sheet);
  for (const sheet of versionSheets(versionEffect(staging, skirt, more), staging)) sheets.set(`version ${sheet.name}`, sheet);
  const sources = await compareSources(staging, staging.pieces[0]!, { buy: { price: 9000, days: 3 } }, PLAINLY);
  sheets.set("sources", sourcesSheet(sources, "Snow skirt", staging.production));
});

describe("the tables of what would be different", () => {
  it("have as many cells in each row as headings, all of them text", () => {
    expect(sheets.size).toBe(7);
    for (const { headings, rows } of sheets.values())
      for (const cells of rows) expect([cells.length, cells.every((cell) => typeof cell === "string")]).toEqual([headings.length, true]);
  });

  it("tell who wears what now, and leave out what stays", () => {
    const rows = sheets.get("compared garments")!.rows.map(([before, after, , worn, wears]) => [before, after, worn, wears]);
    expect(rows[0]).toEqual(["MG 001", "MG 001", "size W10; size W10", "ines; ruth"]);
    expect(rows.map(([before]) => before)).not.toContain("MG 005");
    expect(sheets.get("compared materials")!.rows).toEqual([]);
  });

  it("give hours and cloth of a version with their signs", () => {
    // 8 layers of 9 in more: 72 in, 2 yd for each of two.
    expect(sheets.get("version garments")!.rows[0]!.slice(4, 8)).toEqual(["+49 min", "+1 h 58", "+2 h 27", "net-54 +2 yd"]);
    expect(sheets.get("version materials")!.rows).toEqual([["net-54", "Net", "4.44 yd", "8.44 yd", "+4 yd"]]);
  });

  it("mark the source that the piece list has", () => {
    expect(sheets.get("sources")!.rows.map(([source]) => source)).toEqual(["build *", "pull", "alter", "hire", "buy"]);
  });
});
