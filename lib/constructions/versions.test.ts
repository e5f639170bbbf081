import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { versionFile, versionMeant, versionsOf } from "./versions";

const known = [
  { code: "skirt", version: 2 },
  { code: "tunic", version: 9 },
  { code: "skirt", version: 1 },
  { code: "skirt", version: 10 },
];

describe("the versions of a construction", () => {
  it("stand oldest first, by number and not by letter", () => {
    expect(versionsOf(known, "skirt").map(({ version }) => version)).toEqual([1, 2, 10]);
  });

  it("are the newest unless one is named", () => {
    expect(versionMeant(known, "skirt", null)?.version).toBe(10);
    expect(versionMeant(known, "skirt", 2)?.version).toBe(2);
    expect(versionMeant(known, "skirt", 3)).toBeUndefined();
    expect(versionMeant(known, "boot", null)).toBeUndefined();
  });

  it("have files of different names, the oldest the plain one", () => {
    expect(known.map((one) => versionFile(known, one))).toEqual([
      "constructions/skirt@2.json",
      "constructions/tunic.json",
      "constructions/skirt.json",
      "constructions/skirt@10.json",
    ]);
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: 1, max: 99 }), { minLength: 1 }), (numbers) => {
        const all = numbers.map((version) => ({ code: "skirt", version }));
        expect(new Set(all.map((one) => versionFile(all, one))).size).toBe(all.length);
      }),
    );
  });
});
