import { describe, expect, it } from "vitest";
import { compareStagings } from "./compare";
import { edited, smallStaging } from "./fixtures";

const staging = smallStaging();
const turnedRound = <Value>(value: Value): Value => {
  if (Array.isArray(value)) return value.map(turnedRound) as Value;
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .map(([key, part]) => [key, turnedRound(part)] as const)
      .toReversed(),
  ) as Value;
};
const texts = (changes: Readonly<Record<string, string>>) =>
  compareStagings(staging, smallStaging(changes)).map(({ file, kind, text }) => `${file} ${kind}: ${text}`);

describe("compareStagings", () => {
  it("finds nothing between a staging and itself", () => expect(compareStagings(staging, smallStaging())).toEqual([]));

  it("finds nothing where only the keys of objects stand in another order, as a database may give them back", () => {
    const turned = turnedRound(staging);
    expect(JSON.stringify(turned)).not.toBe(JSON.stringify(staging));
    expect(compareStagings(turned, staging)).toEqual([]);
    expect(compareStagings(staging, turned)).toEqual([]);
  });

  it("finds everything added where nothing was before", () => {
    const changes = compareStagings(null, staging);
    expect(new Set(changes.map((change) => change.kind))).toEqual(new Set(["added"]));
    expect(changes).toContainEqual({
      file: "roles.csv",
      kind: "added",
      name: "snow",
      field: null,
      from: null,
      to: "snow, Snow, corps, 2",
      text: "snow is added.",
    });
  });

  it("names the row and the cell that changes, from what to what", () => {
    expect(compareStagings(staging, smallStaging(edited("materials.csv", "54,53", '54,"52 1/2 in"')))).toEqual([
      {
        file: "materials.csv",
        kind: "changed",
        name: "net-54",
        field: "cuttable",
        from: "53 in",
        to: "52 1/2 in",
        text: "net-54: cuttable was 53 in, becomes 52 1/2 in.",
      },
    ]);
  });

  it("shows a recast place as one change of that place", () => {
    expect(texts(edited("casting.csv", "first,queen,1,ruth", "first,queen,1,bo"))).toEqual([
      "casting.csv changed: first, queen, 1, cast: performer was ruth, becomes bo.",
      "casting.csv changed: first, queen, 1, cast: size_group was W10, becomes M40.",
    ]);
  });

  it("tells rows without names apart by all their cells", () => {
    expect(texts(edited("calls.csv", "11:15", "11:30"))).toEqual([
      "calls.csv added: ines, 2027-02-02, 10:00, 11:30, class is added.",
      "calls.csv removed: ines, 2027-02-02, 10:00, 11:15, class is removed.",
    ]);
  });

  it("warns when garments would get other numbers", () => {
    expect(texts(edited("pieces.csv", "queen-skirt,silver", "sash,silver,Sash,buy,,,role,,,dress,,,\nqueen-skirt,silver"))).toEqual([
      "pieces.csv added: sash is added.",
      "pieces.csv renumbered: Garments from MG 003 on get other numbers, or fall away.",
    ]);
    expect(texts(edited("pieces.csv", "18.50,", "18.50,\nsash,silver,Sash,buy,,,role,,,dress,,,"))).toEqual([
      "pieces.csv added: sash is added.",
    ]);
  });

  it("names the parts of a construction that differ", () => {
    const file = "constructions/skirt.json";
    expect(texts(edited(file, '"version":1', '"version":2'))).toEqual([`${file} changed: skirt: version was 1, becomes 2.`]);
    expect(texts(edited(file, "[30,60,90]", "[30,70,90]"))).toEqual([`${file} changed: skirt: operations differ.`]);
  });
});
