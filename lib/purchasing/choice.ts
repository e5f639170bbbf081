import { ascending } from "d3-array";
import { addDays } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { CuttingPlan } from "#lib/cutting/cuttingPlan";
import type { FoundCuts } from "#lib/cutting/question";
import type { Material, Offer } from "#lib/materials/material";
import { packsToCut } from "./cutFrom";
import type { NeedShare } from "./demand";
import { cheapestOrder, type PackOrder } from "./packs";

/** How one material is bought: one order for all that is needed of it, so that ends serve several garments and all of it counts towards the price. */
export interface Choice {
  readonly offer: Offer;
  /** Packs that hold the quantity, and those the cutting plan opens: an order is at least the greater. */
  readonly byQuantity: number;
  readonly byCutting: number;
  readonly order: PackOrder;
  /** Null for what is only counted. */
  readonly plan: () => CuttingPlan | null;
}

/** First day goods ordered on `today` may be cut. */
export const readyFrom = (offer: Offer, today: PlainDate): PlainDate => addDays(today, offer.leadDays + offer.inspectionDays);

/** Every offer that holds the pieces, cheapest for the quantity first; equal ones by supplier's name, then the smaller pack. */
export const choices = (material: Material, toBuy: readonly NeedShare[], offers: readonly Offer[], found?: FoundCuts): readonly Choice[] =>
  offers
    .flatMap((offer) => {
      const cut = packsToCut(material, toBuy, offer, found);
      return cut === null
        ? []
        : [{ ...cut, plan: once(cut.plan), offer, order: cheapestOrder(offer, Math.max(cut.byQuantity, cut.byCutting)) }];
    })
    .sort((a, b) => a.order.cost - b.order.cost || ascending(a.offer.supplier, b.offer.supplier) || a.offer.pack - b.offer.pack);

/** Made when it is first asked for, and kept. */
const once = <T>(make: () => T): (() => T) => {
  let made: { readonly value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
};

/** Why a material cannot be bought. */
export const whyNobody = (name: string, offers: readonly Offer[]): string =>
  offers.length === 0 ? `Nobody offers ${name}.` : `No pack of ${name} is long enough for its longest piece.`;
