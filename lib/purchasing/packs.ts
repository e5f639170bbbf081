import type { Offer } from "#lib/materials/material";
import type { MinorUnits } from "#lib/units/quantities";

/** So many packs of an offer and what they come to. */
export interface PackOrder {
  readonly packs: number;
  readonly pricePerPack: MinorUnits;
  readonly cost: MinorUnits;
}

/** The price each pack takes when so many are ordered: all units take the price reached. */
export const pricePerPack = (offer: Offer, packs: number): MinorUnits =>
  offer.prices.reduce((price, step) => (step.from <= packs ? step.price : price), offer.prices[0]?.price ?? 0);

/**
 * The cheapest order of at least so many packs: the least itself (or the supplier's minimum), or as many as reach a lower price where that
 * costs less in all. The fewest packs of equal cost, so that a greater need never gives fewer packs or a smaller cost.
 */
export const cheapestOrder = (offer: Offer, least: number): PackOrder => {
  if (least === 0) return { packs: 0, pricePerPack: pricePerPack(offer, 0), cost: 0 };
  const smallest = Math.max(least, offer.minimumPacks);
  const orders = [smallest, ...offer.prices.map((step) => step.from).filter((from) => from > smallest)].map((packs) => {
    const price = pricePerPack(offer, packs);
    return { packs, pricePerPack: price, cost: packs * price };
  });
  return orders.reduce((best, order) => (order.cost < best.cost ? order : best));
};
