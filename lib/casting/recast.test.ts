import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { smallStaging } from "#lib/staging/fixtures";
import type { CastCell, Recast } from "./castCell";
import { recast } from "./recast";

const staging = smallStaging();
const cell = (cast: string, role: string, place: number, standing: CastCell["standing"] = "cast"): CastCell => ({
  cast,
  role,
  place,
  standing,
});
const rows = (...changes: readonly Recast[]) =>
  recast(staging, changes).casting.map((row) => [row.cast, row.role, row.place, row.performer, row.sizeGroup, row.standing].join(" "));
const before = rows();

describe("recast", () => {
  it("puts a performer into a place where it stands in the list, on the performer's size group", () => {
    const after = rows({ ...cell("first", "snow", 2), performers: ["bo"] });
    expect(after).toEqual(before.with(1, "first snow 2 bo M40 cast"));
  });

  it("keeps the size group of a place that is emptied", () => {
    expect(rows({ ...cell("first", "snow", 1), performers: [] })[0]).toBe("first snow 1  W10 cast");
  });

  it("adds a place a cast did not have behind its role, on the group of the same place elsewhere", () => {
    expect(rows({ ...cell("third", "queen", 1), performers: [] }).at(-1)).toBe("third queen 1  W10 cast");
    expect(rows({ ...cell("second", "queen", 1), performers: null }, { ...cell("second", "queen", 1), performers: ["bo"] })).toContain(
      "second queen 1 bo M40 cast",
    );
  });

  it("takes a place out with those who stand by for it", () => {
    expect(rows({ ...cell("first", "queen", 1), performers: null })).toEqual(before.filter((row) => !row.startsWith("first queen")));
  });

  it("lets several stand by behind the place they cover, each once, and nobody where nobody is to dance", () => {
    const after = rows({ ...cell("second", "queen", 1, "cover"), performers: ["bo", "ruth", "bo"] });
    expect(after.slice(-2)).toEqual(["second queen 1 ruth W10 cover", "first queen 1 ines W10 cover"]);
    expect(after.filter((row) => row.endsWith("cover"))).toHaveLength(3);
    expect(rows({ ...cell("third", "queen", 1, "cover"), performers: ["bo"] })).toEqual(before);
  });

  it("is taken back by naming who was there, whatever the cell", () => {
    const danced = staging.casting.filter(({ standing }) => standing === "cast");
    const law = fc.property(fc.constantFrom(...danced), fc.constantFrom(...staging.performers), (row, { code }) => {
      const was = row.performer === null ? [] : [row.performer];
      const there = recast(staging, [{ ...row, performers: [code] }]);
      const back = recast(there, [{ ...row, performers: was }]);
      // An emptied place keeps the group of who was there last.
      expect(back.casting.map(({ performer }) => performer)).toEqual(staging.casting.map(({ performer }) => performer));
    });
    fc.assert(law);
  });
});
