import type { Need } from "#lib/breakdown/work";
import type { Lot, Material, Quantity } from "#lib/materials/material";
import { showQuantity } from "#lib/materials/showQuantity";
import { dyeLotsOf, type ShelfLot } from "#lib/stock/shelf";
import type { LengthSystem } from "#lib/units/showLength";
import type { Demand, NeedShare } from "./demand";

/** So much of a lot is kept for a need. */
export interface Promised {
  readonly lot: Lot;
  readonly need: Need;
  readonly quantity: Quantity;
}

/** A demand with what the shelf gives and what is left to buy. */
export interface Supplied {
  readonly demand: Demand;
  readonly promised: readonly Promised[];
  readonly toBuy: readonly NeedShare[];
  readonly warnings: readonly string[];
}

/** Whether a lot can give these needs their pieces: rods may be long enough in all and each too short for one bone. */
export type Fits = (material: Material, lot: Lot, needs: readonly Need[]) => boolean;

/**
 * Promises lots to needs, in order, and counts the shelf down. A garment's length is never made up from two lots; what is counted may be.
 * A set that must match is cut from one dye lot if that covers it whole, else from none, and a warning says which garments would differ.
 */
export const promise = (demand: Demand, shelf: readonly ShelfLot[], fits: Fits, lengths: LengthSystem): Supplied => {
  const lots = shelf.filter((entry) => entry.lot.material === demand.material.code && entry.left > 0);
  if (demand.set === null) return take(demand, lots, fits);
  const warnings: string[] = [];
  const show = (quantity: Quantity) => showQuantity(quantity, demand.material.measure, lengths);
  const needed = demand.shares.reduce((sum, share) => sum + share.quantity, 0);
  for (const [dyeLot, entries] of dyeLotsOf(lots)) {
    const trial = entries.map((entry) => ({ ...entry }));
    const { toBuy } = take(demand, trial, fits);
    if (toBuy.length === 0) return take(demand, entries, fits);
    const held = entries.reduce((sum, entry) => sum + entry.left, 0);
    const differing = [...new Set(toBuy.map((share) => share.need.garment))].join(", ");
    warnings.push(
      `Dye lot ${dyeLot} is not used: it holds ${show(held)} of the ${show(needed)} that ${demand.set} needs in one dye lot; ${differing} would differ.`,
    );
  }
  return { demand, promised: [], toBuy: demand.shares, warnings };
};

const take = (demand: Demand, lots: readonly ShelfLot[], fits: Fits): Supplied => {
  const { material } = demand;
  const promised: Promised[] = [];
  const toBuy: NeedShare[] = [];
  for (const { need, quantity } of demand.shares) {
    let missing = quantity;
    for (const entry of lots) {
      const usable =
        material.measure === "count" ? entry.left > 0 : entry.left >= missing && fits(material, entry.lot, [...entry.needs, need]);
      if (missing === 0 || !usable) continue;
      const taken = Math.min(entry.left, missing);
      entry.left -= taken;
      entry.needs = [...entry.needs, need];
      missing -= taken;
      promised.push({ lot: entry.lot, need, quantity: taken });
    }
    if (missing > 0) toBuy.push({ need, quantity: missing });
  }
  return { demand, promised, toBuy, warnings: [] };
};
