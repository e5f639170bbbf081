import { describe, expect, it } from "vitest";
import { breakDown } from "#lib/breakdown/breakDown";
import { garmentsOf } from "#lib/casting/garments";
import type { Construction } from "#lib/constructions/construction";
import { versionMeant } from "#lib/constructions/versions";
import { smallStaging } from "#lib/staging/fixtures";
import type { Staging } from "#lib/staging/staging";
import { moveToVersion, withVersion } from "./moveToVersion";
import { piecesNamed } from "./piecesNamed";
import { versionEffect } from "./versionEffect";

const staging = smallStaging();
const skirt = versionMeant(staging.constructions, "skirt", null)!;
/** Mounting takes 5, 10 and 20 minutes more, and each layer 2 in more of net. */
const slower: Construction = {
  ...skirt,
  version: 2,
  operations: skirt.operations.map((one) => (one.code === "mount" ? { ...one, setupMinutes: [35, 70, 110] } : one)),
  needs: skirt.needs.map((need) => ({ ...need, formula: "12 in * layers" })),
};
const kept = withVersion(staging, slower);
const both = kept.ok ? kept.value : staging;
const moved = (pieces: "all" | readonly string[]) => {
  const result = moveToVersion(both, "skirt", 2, pieces);
  return result.ok ? result.value : null;
};
const works = (of: Staging) => breakDown(of, garmentsOf(of));
const likely = (of: Staging) =>
  works(of)
    .flatMap((work) => work.operations)
    .reduce((sum, { minutes }) => sum + minutes[1], 0);
const net = (of: Staging) =>
  works(of)
    .flatMap((work) => work.needs)
    .reduce((sum, { quantity }) => sum + quantity, 0);

describe("the effect of a new version", () => {
  it("names the garments that would change, by how many minutes and how much cloth", () => {
    // The two Snow skirts are built, of 8 layers: 8 x 2 in more each. The Queen's is altered, for which the construction has no work.
    const { garments, unchanged, before, after, materials } = versionEffect(staging, skirt, slower);
    expect(garments.map((one) => [one.garment, ...one.after.map((minutes, at) => minutes - one.before[at]!)])).toEqual([
      ["MG 001", 5, 10, 20],
      ["MG 002", 5, 10, 20],
    ]);
    expect(unchanged).toBe(1);
    expect(after.map((minutes, at) => minutes - before[at]!)).toEqual([10, 20, 40]);
    expect(materials).toEqual([{ material: "net-54", measure: "length", before: 2 * 80 * 2032, after: 2 * 96 * 2032 }]);
  });

  it("is nothing for a version that says the same", () => {
    expect(versionEffect(staging, skirt, { ...skirt, version: 2 })).toMatchObject({ garments: [], unchanged: 3 });
  });

  it("is what moving the pieces then does to the staging", () => {
    for (const pieces of ["all", ["snow-skirt"], ["queen-skirt"], []] as const) {
      const { before, after, materials } = versionEffect(staging, skirt, slower, pieces);
      const then = moved(pieces)!;
      expect(likely(then) - likely(staging)).toBe(after[1] - before[1]);
      expect(net(then) - net(staging)).toBe(materials.reduce((sum, one) => sum + one.after - one.before, 0));
    }
  });

  it("tells what the new version no longer understands", () => {
    const simple = { ...slower, parameters: slower.parameters.filter(({ code }) => code !== "partnered") };
    const notes = versionEffect(staging, skirt, simple).garments[0]?.notes ?? [];
    expect(notes.join(" ")).toContain("partnered");
  });
});

describe("a version added", () => {
  it("moves nothing by itself: each piece keeps to the version it was made by", () => {
    expect(works(both)).toEqual(works(staging));
    expect(both.constructions.map(({ version }) => version)).toEqual([1, 2]);
    expect(both.constructions[0]).toEqual(skirt);
  });

  it("must be newer than all there are", () => {
    for (const version of [1, 2]) expect(withVersion(both, { ...slower, version }).ok).toBe(false);
    expect(withVersion(both, { ...slower, version: 3 }).ok).toBe(true);
  });
});

describe("moving pieces", () => {
  it("makes those told by the version, and leaves the others", () => {
    const versions = (of: Staging | null) => of && works(of).map((work) => work.construction?.version);
    expect(versions(moved(["snow-skirt"]))?.slice(0, 3)).toEqual([2, 2, 1]);
    expect(versions(moved("all"))?.slice(0, 3)).toEqual([2, 2, 2]);
  });

  it("and back leaves the staging as it was before", () => {
    const back = moveToVersion(moved("all")!, "skirt", 1, "all");
    expect(back.ok && works(back.value)).toEqual(works(staging));
  });

  it("is refused to a version there is not, and for a piece made otherwise", () => {
    expect(moveToVersion(both, "skirt", 3, "all")).toEqual({ ok: false, error: "There is no version 3 of skirt." });
    expect(moveToVersion(both, "skirt", 2, ["shoes"])).toEqual({ ok: false, error: '"shoes" is not a piece made as skirt.' });
  });

  it("takes a garment's number for its piece", () => {
    expect(piecesNamed(staging, ["MG 002", "snow-skirt", "MG 003"])).toEqual({ ok: true, value: ["snow-skirt", "queen-skirt"] });
    expect(piecesNamed(staging, ["MG 099"])).toEqual({ ok: false, error: '"MG 099" is neither a piece nor a garment.' });
  });
});
