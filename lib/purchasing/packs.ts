import type { Offer } from "#lib/materials/material";
import type { MinorUnits } from "#lib/units/quantities";

/** So many packs at one price. */
export interface PricedPacks {
  readonly packs: number;
  readonly price: MinorUnits;
}

/** So many packs of an offer and what they come to. */
export interface PackOrder {
  readonly packs: number;
  /** Of the last pack: with incremental breaks the earlier ones cost more. */
  readonly pricePerPack: MinorUnits;
  /** Packs by price: one part, or one for each step of incremental breaks. */
  readonly parts: readonly PricedPacks[];
  readonly cost: MinorUnits;
}

/** So many packs at the offer's prices: all at the price reached, or each at that of its own step. */
export const orderOf = ({ prices, breaks }: Offer, packs: number): PackOrder => {
  const reached = prices.filter(({ from }, at) => at === 0 || from <= packs);
  const pricePerPack = reached.at(-1)?.price ?? 0;
  const parts =
    breaks === "all" || packs === 0
      ? [{ packs, price: pricePerPack }]
      : reached.map(({ from, price }, at) => ({
          packs: Math.min(packs, (reached[at + 1]?.from ?? packs + 1) - 1) - (at === 0 ? 0 : from - 1),
          price,
        }));
  return { packs, pricePerPack, parts, cost: parts.reduce((sum, part) => sum + part.packs * part.price, 0) };
};

/**
 * The cheapest order of at least so many packs: the least itself (or the supplier's minimum), or as many as reach a lower price where that
 * costs less in all. The fewest packs of equal cost, so that a greater need never gives fewer packs or a smaller cost.
 */
export const cheapestOrder = (offer: Offer, least: number): PackOrder => {
  if (least === 0) return orderOf(offer, 0);
  const smallest = Math.max(least, offer.minimumPacks);
  const orders = [smallest, ...offer.prices.map((step) => step.from).filter((from) => from > smallest)].map((packs) =>
    orderOf(offer, packs),
  );
  return orders.reduce((best, order) => (order.cost < best.cost ? order : best));
};
