import { group } from "d3-array";
import type { GarmentWork, Need } from "#lib/breakdown/work";
import type { CuttingPlan } from "#lib/cutting/cuttingPlan";
import type { FoundCuts } from "#lib/cutting/question";
import type { Material, Offer } from "#lib/materials/material";
import type { Staging } from "#lib/staging/staging";
import { shelfOf } from "#lib/stock/shelf";
import { type Choice, choices } from "./choice";
import { cutFromLot } from "./cutFrom";
import { demandsOf } from "./demand";
import { promise, type Supplied } from "./promise";
import { withCarriage } from "./suppliers";

/** How one material is had: from the shelf, and for the rest from whom. */
export interface MaterialSupply {
  readonly material: Material;
  readonly supplied: readonly Supplied[];
  /** The one taken first, the others cheapest first; empty when nothing is left to buy or nobody sells it. */
  readonly choices: readonly Choice[];
  readonly offers: readonly Offer[];
  /** Cutting plans of the lots it takes. */
  readonly fromLots: () => readonly CuttingPlan[];
}

/** What of a staging cloth and buying depend on; sets only for what they keep for repair. */
export type GoodsOf = Pick<Staging, "materials" | "offers" | "lots" | "production"> & Partial<Pick<Staging, "sets">>;

/**
 * Where everything comes from, before any date is known: both the purchase list and the first days of cutting follow from this one answer,
 * so that they cannot disagree.
 */
export const supplyOf = (
  staging: GoodsOf,
  works: readonly GarmentWork[],
  found?: FoundCuts,
): { readonly supplies: readonly MaterialSupply[]; readonly unlisted: ReadonlyMap<string, readonly Need[]> } => {
  const { demands, unlisted } = demandsOf(staging.materials, works, staging.sets);
  const supplies = [...group(demands, (demand) => demand.material)].map(([material, alike]) => {
    const offers = staging.offers.filter((offer) => offer.material === material.code);
    const shelf = shelfOf(staging.lots.filter((lot) => lot.material === material.code));
    const supplied = alike.map((demand) =>
      promise(demand, shelf, (goods, lot, needs) => cutFromLot(goods, lot, needs, offers) !== null, staging.production.lengths),
    );
    const toBuy = supplied.flatMap((one) => one.toBuy);
    const taken = material.measure === "count" ? [] : shelf.filter((entry) => entry.needs.length > 0);
    return {
      material,
      supplied,
      choices: toBuy.length > 0 ? choices(material, toBuy, offers, found) : [],
      offers,
      fromLots: () => taken.flatMap((entry) => cutFromLot(material, entry.lot, entry.needs, offers, found)?.plan() ?? []),
    };
  });
  const ordered = withCarriage(supplies.map((supply) => supply.choices));
  return { supplies: supplies.map((supply, at) => ({ ...supply, choices: ordered[at]! })), unlisted };
};
