import { ascending, group } from "d3-array";
import type { Quantity } from "#lib/materials/material";
import { freeOf } from "#lib/stock/movement";
import type { ShelfEntry } from "#prisma/stock/shelf";

/** A material as the shelf shows it, with its lots. */
export interface ShelfMaterial {
  readonly material: string;
  readonly name: string;
  readonly colour: string;
  readonly measure: ShelfEntry["measure"];
  readonly here: readonly ShelfEntry[];
  readonly awaited: readonly ShelfEntry[];
  readonly onHand: Quantity;
  readonly free: Quantity;
}

/** Lots by material, those whose name, code, colour, dye lot, place or lot has the words first narrowed to. */
export const shelfMaterials = (entries: readonly ShelfEntry[], words = ""): readonly ShelfMaterial[] => {
  const sought = words.trim().toLowerCase();
  const found = entries.filter(({ name, material, colour, dyeLot, location, code }) =>
    [name, material, colour, dyeLot, location, code].some((text) => text.toLowerCase().includes(sought)),
  );
  return [...group(found, (entry) => entry.material)]
    .map(([material, lots]) => {
      const here = lots.filter(({ arrives }) => arrives === null);
      const { name, colour, measure } = lots[0] as ShelfEntry;
      const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
      return {
        ...{ material, name, colour, measure, here },
        awaited: lots.filter(({ arrives }) => arrives !== null),
        onHand: sum(here.map(({ balance }) => balance.onHand)),
        free: sum(here.map(({ balance }) => freeOf(balance))),
      };
    })
    .sort((a, b) => ascending(a.name, b.name) || ascending(a.material, b.material));
};
