import { describe, expect, it } from "vitest";
import { smallStaging } from "#lib/staging/fixtures";
import { askedPiece } from "./askedPiece";

const small = smallStaging();
const [skirt] = small.constructions;
const other = { ...skirt!, code: "other", parameters: skirt!.parameters.filter(({ code }) => code === "layers"), needs: [] };
const staging = { ...small, constructions: [skirt!, other] };
const piece = staging.pieces[0]!;
const asked = (given: Readonly<Record<string, unknown>>) => {
  const { construction, parameters, materials } = askedPiece(staging, piece, given);
  return [construction, parameters, materials];
};

describe("a piece as it is asked for", () => {
  it("stays as it is when nothing is", () => expect(askedPiece(staging, piece, {})).toEqual(piece));

  it("takes parameters, and forgets those that are the construction's own", () => {
    expect(asked({ "p.layers": "10", "p.partnered": "no" })).toEqual(["skirt", { layers: "10" }, { net: "net-54" }]);
    expect(asked({ "p.layers": " 6 " })).toEqual(["skirt", { partnered: "yes" }, { net: "net-54" }]);
  });

  it("takes over to another construction what it knows too", () => {
    expect(asked({ construction: "other" })).toEqual(["other", { layers: "8" }, {}]);
    expect(asked({ construction: "" })).toEqual([null, {}, {}]);
  });

  it("keeps its construction where another is not known", () => expect(asked({ construction: "nothing" })[0]).toBe("skirt"));
});
