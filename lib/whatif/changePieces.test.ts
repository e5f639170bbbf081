import { describe, expect, it } from "vitest";
import { breakDown } from "#lib/breakdown/breakDown";
import { garmentsOf } from "#lib/casting/garments";
import { smallStaging } from "#lib/staging/fixtures";
import type { Staging } from "#lib/staging/staging";
import { LENGTH_PER_INCH } from "#lib/units/quantities";
import { changePieces, type PieceChange } from "./changePieces";
import { pieceEffect } from "./pieceEffect";

const staging = smallStaging();
const piece = (of: Staging, code: string) => of.pieces.find((one) => one.code === code)!;
const changed = (pieces: readonly string[], change: PieceChange) => changePieces(staging, pieces, change);
const effectOf = (pieces: readonly string[], change: PieceChange) =>
  pieceEffect(staging, changed(pieces, change), breakDown(staging, garmentsOf(staging)));

describe("changing pieces", () => {
  it("leaves every other piece, and what the change does not name, as it is", () => {
    const next = changed(["snow-skirt"], { weight: 7 });
    expect(piece(next, "snow-skirt")).toEqual({ ...piece(staging, "snow-skirt"), weight: 7 });
    expect(piece(next, "shoes")).toEqual(piece(staging, "shoes"));
  });

  it("sets a parameter only where the construction has it, and gives it back to the construction", () => {
    const next = changed(["snow-skirt", "shoes"], { parameters: { layers: "6", partnered: null, feathers: "12" } });
    expect(piece(next, "snow-skirt").parameters).toEqual({ layers: "6" });
    expect(piece(next, "shoes").parameters).toEqual({});
  });

  it("drops what another construction does not know", () => {
    const next = changed(["snow-skirt"], { made: { construction: null, version: null } });
    expect(piece(next, "snow-skirt")).toMatchObject({ construction: null, parameters: {}, materials: {} });
  });
});

describe("the effect of a change", () => {
  it("is nothing for nothing", () => {
    expect(effectOf(["snow-skirt"], {})).toMatchObject({ lines: [], goods: 0, materials: [], notes: [], renumberedFrom: null });
  });

  it("counts minutes and net of every garment of the piece", () => {
    // Two built skirts: from 8 layers to 6, 2 min and 10 in less a layer each.
    const { lines, before, after, materials } = effectOf(["snow-skirt"], { parameters: { layers: "6" } });
    expect(lines.map(({ piece: code, before: was }) => [code, was.garments])).toEqual([["snow-skirt", 2]]);
    expect(after.minutes - before.minutes).toBe(-2 * 2 * 2);
    expect(after.net - before.net).toBe(-2 * 2 * 10 * LENGTH_PER_INCH);
    expect(materials).toEqual([expect.objectContaining({ material: "net-54", before: before.net, after: after.net })]);
  });

  it("says what is wrong with a parameter", () => {
    expect(effectOf(["snow-skirt"], { parameters: { layers: "99" } }).notes).toEqual([
      { piece: "snow-skirt", text: expect.stringContaining("outside 1 to 16") },
    ]);
  });

  it("buys less when less is asked for, and the price of what is bought instead", () => {
    const { before, after, goods } = effectOf(["snow-skirt"], { source: "buy", price: 5000 });
    expect(after).toMatchObject({ minutes: 0, net: 0, price: 10_000 });
    expect(before.price).toBe(0);
    expect(goods).toBeLessThanOrEqual(0);
  });

  it("lists what shares a set with it, since learning goes by the order in the set", () => {
    const together = changePieces(staging, ["queen-skirt"], {});
    const set = { ...together, pieces: together.pieces.map((one) => (one.code === "shoes" ? one : { ...one, set: "skirts" })) };
    const { lines } = pieceEffect(set, changePieces(set, ["snow-skirt"], { weight: 9 }), breakDown(set, garmentsOf(set)));
    expect(lines.map(({ piece: code }) => code)).toEqual(["snow-skirt", "queen-skirt"]);
  });

  it("names the first garment that gets another number", () => {
    // The skirts of two places become those of each performer and unnamed place of both casts: the first cast's two stay first.
    const { renumberedFrom, before, after } = effectOf(["snow-skirt"], { each: "performer" });
    expect(after.garments).toBeGreaterThan(before.garments);
    expect(renumberedFrom).toBe("MG 003");
  });
});
