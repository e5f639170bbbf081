import { describe, expect, it } from "vitest";
import { edited, smallStaging } from "#lib/staging/fixtures";
import { costumeChanges, isQuick, placeOfChange } from "./changes";

const scenes = (...rows: readonly string[]) => ({ "scenes.csv": ["code,name,act,starts,minutes", ...rows].join("\n") });
const appearances = (...rows: readonly string[]) => ({ "appearances.csv": ["role,scene,costume", ...rows].join("\n") });
const costumes = { "costumes.csv": "code,name,role\nwhite,White,snow\nsilver,Silver,queen\nblack,Black,queen" };
const evening = scenes("fall,Snowfall,1,30,7", "walk,Walk,1,37,3", "end,Finale,2,60,9");
const said = (...changes: readonly Readonly<Record<string, string>>[]) =>
  costumeChanges(smallStaging(Object.assign({}, evening, costumes, ...changes))).map(
    ({ cast, performer, from, to, minutes, where, overInterval }) =>
      `${cast} ${performer}: ${from.costume} in ${from.scene} to ${to.costume} in ${to.scene}, ${minutes}, ${where}${overInterval ? ", interval" : ""}`,
  );

describe("changes of costume", () => {
  it("are timed from the end of one scene to the start of the next the body is on in", () => {
    expect(said(appearances("snow,fall,white", "queen,fall,silver", "queen,end,black"))).toEqual([
      "first ruth: silver in fall to black in end, 23, dressing room, interval",
      "second ines: silver in fall to black in end, 23, dressing room, interval",
    ]);
  });

  it("go straight on where the scenes touch, and are none in the same costume", () => {
    expect(said(appearances("snow,fall,white", "queen,fall,silver", "queen,walk,black", "queen,end,black"))[0]).toBe(
      "first ruth: silver in fall to black in walk, 0, wings",
    );
    expect(said(appearances("snow,fall,white", "snow,end,white", "queen,fall,silver"))).toEqual([]);
  });

  it("follow the performer from one role to another", () => {
    const both = edited("casting.csv", "first,snow,2,,W10", "first,snow,2,ruth,");
    expect(said(both, appearances("snow,fall,white", "queen,end,silver"))).toContain(
      "first ruth: white in fall to silver in end, 23, dressing room, interval",
    );
  });

  it("count a change within a scene as no time at all, and leave clashes to the casting", () => {
    expect(said(appearances("queen,fall,silver", "queen,fall,black", "snow,end,white"))[0]).toContain(
      "silver in fall to black in fall, 0, wings",
    );
    const both = edited("casting.csv", "first,snow,2,,W10", "first,snow,2,ruth,");
    expect(said(both, appearances("snow,fall,white", "queen,fall,silver"))).toEqual([]);
  });

  it("are quick up to five minutes: in the wings under one, in a booth up to five, beyond it upstairs", () => {
    expect([0, 1, 5, 6].map(placeOfChange)).toEqual(["wings", "booth", "booth", "dressing room"]);
    expect([0, 5, 6].map((minutes) => isQuick({ minutes }))).toEqual([true, true, false]);
  });
});
