import { describe, expect, it } from "vitest";
import { edited, smallStaging } from "#lib/staging/fixtures";
import { clashes } from "./clashes";
import { garmentsOf } from "./garments";

const staging = smallStaging();
const said = (garments: ReturnType<typeof garmentsOf>) =>
  garments.map(({ number, name, wearers }) => [
    number,
    name,
    wearers.map((each) => `${each.performer ?? each.sizeGroup}/${each.standing}`).join(" "),
  ]);

describe("garmentsOf", () => {
  it("numbers garments in the order of the piece list, one for each place, role or performer", () => {
    expect(said(garmentsOf(staging))).toEqual([
      ["MG 001", "Snow skirt (1 of 2)", "ines/cast ruth/cast"],
      ["MG 002", "Snow skirt (2 of 2)", "W10/cast W10/cast"],
      ["MG 003", "Queen skirt", "ruth/cast ines/cast"],
      ["MG 004", "Shoes (1 of 4)", "ines/cast"],
      ["MG 005", "Shoes (2 of 4)", "W10/cast"],
      ["MG 006", "Shoes (3 of 4)", "ruth/cast"],
      ["MG 007", "Shoes (4 of 4)", "W10/cast"],
    ]);
  });

  it("makes a cover a further wearer of the garment of the place it covers, and of no other", () => {
    const covered = smallStaging(edited("casting.csv", "first,queen,1,ines,,cover", "first,snow,1,bo,,cover"));
    expect(said(garmentsOf(covered)).map((line) => line[2])).toEqual([
      "ines/cast ruth/cast bo/cover",
      "W10/cast W10/cast",
      "ruth/cast ines/cast",
      "ines/cast bo/cover",
      "W10/cast",
      "ruth/cast",
      "W10/cast",
    ]);
  });

  it("counts a performer once who dances a place in two casts", () => {
    const twice = smallStaging(edited("casting.csv", "second,snow,1,ruth", "second,snow,1,ines"));
    expect(said(garmentsOf(twice)).filter(([, name]) => name?.startsWith("Shoes")).length).toBe(3);
    expect(said(garmentsOf(twice))[0]?.[2]).toBe("ines/cast");
  });

  it("fixes the ordinal in the set, and makes the first the prototype", () => {
    expect(
      garmentsOf(staging)
        .map(({ set, ordinal, prototype }) => [set, ordinal, prototype])
        .slice(0, 3),
    ).toEqual([
      ["skirts", 1, true],
      ["skirts", 2, false],
      [null, 1, false],
    ]);
  });

  it("does not depend on the order of the casting within a cast", () => {
    const swapped = { ...staging, casting: [...staging.casting.slice(0, 2).reverse(), ...staging.casting.slice(2)] };
    expect(garmentsOf(swapped)).toEqual(garmentsOf(staging));
  });
});

describe("clashes", () => {
  it("finds nobody in two places at once where everybody dances one", () => expect(clashes(staging)).toEqual([]));

  it("finds a performer in two places of one scene in the same cast", () => {
    const both = smallStaging(edited("casting.csv", "first,snow,2,,W10", "first,snow,2,ruth,"));
    expect(clashes(both)).toEqual([
      {
        performer: "ruth",
        cast: "first",
        scene: "fall",
        places: [
          { role: "snow", place: 2 },
          { role: "queen", place: 1 },
        ],
      },
    ]);
  });
});
