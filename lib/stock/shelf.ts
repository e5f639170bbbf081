import { ascending, group } from "d3-array";
import type { Need } from "#lib/breakdown/work";
import type { Lot, Quantity } from "#lib/materials/material";

/** A lot, what is left of it and what it has been promised to so far. */
export interface ShelfLot {
  readonly lot: Lot;
  left: Quantity;
  needs: readonly Need[];
}

/** Lots on hand and on order, counted down as they are promised. The first that can be cut comes first; then the smaller, to use up ends. */
export const shelfOf = (lots: readonly Lot[]): readonly ShelfLot[] =>
  lots
    .filter((lot) => lot.quantity > 0)
    .sort((a, b) => ascending(a.arrives ?? "", b.arrives ?? "") || a.quantity - b.quantity || ascending(a.code, b.code))
    .map((lot) => ({ lot, left: lot.quantity, needs: [] }));

/** The dye lots among these: what may be used together where colour must match. In the order of the shelf. */
export const dyeLotsOf = (shelf: readonly ShelfLot[]): ReadonlyMap<string, readonly ShelfLot[]> =>
  group(shelf, (entry) => entry.lot.dyeLot || entry.lot.code);
