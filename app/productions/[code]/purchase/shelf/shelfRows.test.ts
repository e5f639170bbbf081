import { describe, expect, it } from "vitest";
import type { ShelfEntry } from "#prisma/stock/shelf";
import { shelfMaterials } from "./shelfRows";

const entry = (code: string, more: Partial<ShelfEntry>): ShelfEntry => ({
  ...{ code, material: "net", name: "Soft net", colour: "white", kind: "net", measure: "length", dyeLot: "7", location: "shelf 3" },
  ...{ arrives: null, order: null, parent: null, breadth: null, balance: { onHand: 100, reserved: 30 }, reservations: [] },
  ...more,
});

describe("the shelf by material", () => {
  const entries = [
    entry("L1", {}),
    entry("L2", { arrives: "2027-02-01" as ShelfEntry["arrives"] }),
    entry("H", { material: "hook", name: "Hooks" }),
  ];

  it("counts what lies here, and what of it is free, without what is awaited", () => {
    const [hooks, net] = shelfMaterials(entries);
    expect(hooks).toMatchObject({ name: "Hooks", onHand: 100, free: 70, awaited: [] });
    expect(net).toMatchObject({ onHand: 100, free: 70, here: [{ code: "L1" }], awaited: [{ code: "L2" }] });
  });

  it("finds a lot by its name, place or dye lot", () => {
    expect(shelfMaterials(entries, "HOOK").map(({ name }) => name)).toEqual(["Hooks"]);
    expect(shelfMaterials(entries, "shelf 9")).toEqual([]);
  });
});
