import { describe, expect, it } from "vitest";
import type { GarmentSet } from "#lib/casting/wardrobe";
import { batches } from "./batches";
import { garment, operation, set, work } from "./fixtures";

const cut = operation("cut", { minutes: [80, 100, 120], setup: [20, 30, 40], batch: true });
const sew = operation("sew", { minutes: [200, 240, 300], waitsFor: [{ on: "cut", lagMinutes: 0, lagKind: "elapsed" }] });
const three = [1, 2, 3].map((ordinal) => garment(`X ${ordinal}`, { set: "reeds", ordinal, prototype: ordinal === 1 }));
const works = three.map((one) => work(one.number, [cut, sew]));
const shown = (sets: readonly GarmentSet[]) =>
  batches(three, works, sets).map((batch) => [batch.operation.code, batch.garments.join(), batch.minutes]);

describe("batches", () => {
  it("share the longest set-up once and add up the rest", () => {
    expect(shown([set("reeds")])).toEqual([
      ["cut", "X 1,X 2,X 3", 30 + 70 + 70 + 70],
      ["sew", "X 1", 240],
      ["sew", "X 2", 240],
      ["sew", "X 3", 240],
    ]);
  });

  it("leave out a prototype that awaits approval", () => {
    const cuts = shown([set("reeds", { prototype: true })]).filter(([code]) => code === "cut");
    expect(cuts).toEqual([
      ["cut", "X 1", 100],
      ["cut", "X 2,X 3", 170],
    ]);
    expect(shown([set("reeds", { prototype: true, approvedOn: "2027-01-01" as never })])[0]).toEqual(["cut", "X 1,X 2,X 3", 240]);
  });

  it("take at most two days", () => {
    const long = operation("cut", { minutes: [1, 430, 600], setup: [0, 30, 60], batch: true });
    const made = batches(
      three,
      three.map((one) => work(one.number, [long])),
      [set("reeds")],
    );
    expect(made.map((batch) => batch.minutes)).toEqual([830, 430]);
  });

  it("never join garments of other sets or of none", () => {
    const loose = [garment("X 1"), garment("X 2")];
    expect(
      batches(
        loose,
        loose.map((one) => work(one.number, [cut])),
        [],
      ),
    ).toHaveLength(2);
  });
});
