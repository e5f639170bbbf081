import { ascending } from "d3-array";
import { addDays } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { Material, Offer } from "#lib/materials/material";
import { packsToCut } from "./cutFrom";
import { cheapestOrder, type PackOrder } from "./packs";
import type { Supplied } from "./promise";
import type { CuttingPlan } from "./purchase";

/** How one material is bought: one offer for all that is needed of it, so that all of it counts towards the price. */
export interface Choice {
  readonly offer: Offer;
  readonly order: PackOrder;
  /** Packs of the order that each demand takes, in their order; what a minimum or a better price adds is in the first. */
  readonly packs: readonly number[];
  readonly plans: readonly (CuttingPlan | null)[];
}

/** First day goods ordered on `today` may be cut. */
export const readyFrom = (offer: Offer, today: PlainDate): PlainDate => addDays(today, offer.leadDays + offer.inspectionDays);

/** Every offer that holds the pieces, cheapest for the quantity first; equal ones by supplier's name, then the smaller pack. */
export const choices = (material: Material, supplied: readonly Supplied[], offers: readonly Offer[]): readonly Choice[] =>
  offers
    .flatMap((offer) => {
      const cut = supplied.map(({ demand, toBuy }) => (toBuy.length > 0 ? packsToCut(material, demand.set, toBuy, offer) : NOTHING));
      return cut.every((one) => one !== null) ? [choiceOf(offer, cut)] : [];
    })
    .sort((a, b) => a.order.cost - b.order.cost || ascending(a.offer.supplier, b.offer.supplier) || a.offer.pack - b.offer.pack);

const NOTHING = { packs: 0, plan: null };

const choiceOf = (offer: Offer, cut: readonly { readonly packs: number; readonly plan: CuttingPlan | null }[]): Choice => {
  const least = cut.reduce((sum, one) => sum + one.packs, 0);
  const order = cheapestOrder(offer, least);
  const first = cut.findIndex((one) => one.packs > 0);
  return {
    offer,
    order,
    packs: cut.map((one, at) => (at === first ? one.packs + order.packs - least : one.packs)),
    plans: cut.map((one) => one.plan),
  };
};

/** Why a material cannot be bought. */
export const whyNobody = (name: string, offers: readonly Offer[]): string =>
  offers.length === 0 ? `Nobody offers ${name}.` : `No pack of ${name} is long enough for its longest piece.`;
