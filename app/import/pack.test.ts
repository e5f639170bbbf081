import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pack, unpack } from "./pack";

describe("pack", () => {
  it("is undone by unpack", () => {
    const name = fc.stringMatching(/^[a-z]{1,8}\.(csv|json)$/);
    fc.assert(
      fc.property(fc.dictionary(name, fc.string({ unit: "grapheme" })), (files) => {
        const back = unpack(pack(new Map(Object.entries(files))));
        expect(back.ok && Object.fromEntries(back.value)).toEqual({ ...files });
      }),
    );
  });

  it("refuses what was tampered with", () => expect(unpack("bm90IGEgemlw").ok).toBe(false));
});
