import { describe, expect, it } from "vitest";
import { smallStaging } from "#lib/staging/fixtures";
import { CastCells, gridColumns, gridRows } from "./castingGrid";

const staging = smallStaging();

describe("the grid of the casting", () => {
  it("has a column for each cast, and one of those who stand by for the first and wherever somebody does", () => {
    const said = (further: readonly string[], all: boolean) =>
      gridColumns(staging, further, all).map(({ cast, standing }) => `${cast} ${standing}`);
    expect(said([], false)).toEqual(["first cast", "second cast", "first cover"]);
    expect(said(["third"], false)).toEqual(["first cast", "second cast", "third cast", "first cover"]);
    expect(said([], true)).toEqual(["first cast", "second cast", "first cover", "second cover"]);
  });

  it("folds the places of a large role until it is opened", () => {
    const roles = [{ code: "reeds", name: "Reeds", kind: "corps" as const, places: 5 }, ...staging.roles];
    const folded = gridRows(roles, () => false).map(({ role, place }) => `${role} ${place}`);
    expect(folded).toEqual(["reeds null", "snow 1", "snow 2", "queen 1"]);
    expect(gridRows(roles, (role) => role === "reeds")).toHaveLength(8);
  });

  it("tells a place that nobody is cast in from one the cast does not have", () => {
    const cells = new CastCells(staging);
    const at = (cast: string, place: number, standing: "cast" | "cover") => cells.at({ cast, role: "snow", place, standing }).performers;
    expect([at("first", 1, "cast"), at("first", 2, "cast"), at("third", 1, "cast")]).toEqual([["ines"], [], null]);
    expect([at("first", 1, "cover"), at("third", 1, "cover")]).toEqual([[], null]);
    const snow = { role: "snow", place: null, places: 2 };
    expect(cells.count({ cast: "first", standing: "cast" }, snow)).toEqual({ of: 2, filled: 1 });
    expect(cells.count({ cast: "third", standing: "cast" }, snow)).toEqual({ of: 0, filled: 0 });
  });
});
