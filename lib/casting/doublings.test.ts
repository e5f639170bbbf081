import { describe, expect, it } from "vitest";
import { edited, smallStaging } from "#lib/staging/fixtures";
import { clashes } from "./clashes";
import { doublings } from "./doublings";

const said = (...changes: readonly Readonly<Record<string, string>>[]) =>
  doublings(smallStaging(Object.assign({}, ...changes))).map(
    ({ performer, cast, kind, scenes, places }) =>
      `${performer} ${cast} ${kind} ${scenes.join(",")}: ${places.map(({ role, place, standing }) => `${role} ${place} ${standing}`).join(", ")}`,
  );
const withoutCover = edited("casting.csv", "\nfirst,queen,1,ines,,cover", "");
const casting = (row: string) => ({ "casting.csv": `${withoutCover["casting.csv"]}\n${row}` });
const apart = edited("appearances.csv", "queen,fall,silver", "queen,end,silver");

describe("doublings", () => {
  it("are none where everybody has one place", () => expect(said(withoutCover)).toEqual([]));

  it("clash when both places are danced in one scene, as the clashes of a scene say too", () => {
    const both = { "casting.csv": withoutCover["casting.csv"]!.replace("first,snow,2,,W10", "first,snow,2,ruth,") };
    expect(said(both)).toEqual(["ruth first clash fall: snow 2 cast, queen 1 cast"]);
    expect(clashes(smallStaging(both))).toHaveLength(1);
    expect(said(both, apart)).toEqual(["ruth first apart : snow 2 cast, queen 1 cast"]);
  });

  it("clash when two scenes run at one time", () => {
    const both = { "casting.csv": withoutCover["casting.csv"]!.replace("first,snow,2,,W10", "first,snow,2,ruth,") };
    const together = edited("scenes.csv", "end,Finale,2,80,9", "end,Finale,1,36,9");
    const after = edited("scenes.csv", "end,Finale,2,80,9", "end,Finale,1,37,9");
    expect(said(both, apart, together)[0]).toContain("clash fall");
    expect(said(both, apart, after)[0]).toContain("apart");
  });

  it("are told when somebody stands by for a role while dancing another, and not when the two are never on together", () => {
    const cover = casting("first,queen,1,ines,,cover");
    expect(said(cover)).toEqual(["ines first cover fall: snow 1 cast, queen 1 cover"]);
    expect(said(cover, apart)).toEqual([]);
  });

  it("are not told of one who stands by for two", () => {
    expect(said({ "casting.csv": `${casting("first,queen,1,bo,,cover")["casting.csv"]}\nfirst,snow,1,bo,,cover` })).toEqual([]);
  });
});
