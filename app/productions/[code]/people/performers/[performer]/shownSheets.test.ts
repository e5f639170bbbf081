import { describe, expect, it } from "vitest";
import { garmentsOf } from "#lib/casting/garments";
import { smallStaging } from "#lib/staging/fixtures";
import type { ProductionView } from "../../../../../_data/stagingPlan";
import { shownSheets } from "./shownSheets";

const small = smallStaging();
const constructions = JSON.parse(JSON.stringify(small.constructions).replaceAll("10 in * layers", "body.hip * layers"));
const staging = { ...small, constructions };
const view = { prepared: { staging, garments: garmentsOf(staging) } } as unknown as ProductionView;
const shown = (role: Parameters<typeof shownSheets>[0], performer = "ines") => shownSheets(role, view, performer);

describe("who sees the measurements of a performer", () => {
  it("is nobody who reads, buys or designs", () => {
    for (const role of ["reader", "buyer", "designer"] as const) expect(shown(role)).toBeNull();
  });

  it("is who makes, of what the garments are cut by, on the newest sheet", () => {
    const sheets = shown("maker");
    expect(sheets?.measurements).toEqual(["hip"]);
    expect(sheets?.sheets.map(({ taken, values }) => [taken, values])).toEqual([["2027-01-14", { hip: 915 * 80 }]]);
    expect(shown("maker", "ruth")).toMatchObject({ measurements: [], whole: false });
  });

  it("is who leads and who cuts, whole and over time", () => {
    for (const role of ["supervisor", "cutter"] as const) {
      expect(shown(role)?.sheets).toHaveLength(2);
      expect(Object.keys(shown(role)!.sheets[0]!.values)).toEqual(["waist", "hip"]);
    }
  });
});
