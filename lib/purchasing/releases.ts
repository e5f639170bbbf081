import type { GarmentWork, Need } from "#lib/breakdown/work";
import { addDays } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { showDay } from "#lib/calendar/showDay";
import type { Lot, Offer } from "#lib/materials/material";
import { readyFrom, whyNobody } from "./choice";
import { type GoodsOf, type MaterialSupply, supplyOf } from "./supply";

/** When a need may first be cut, and why then. */
export interface ClothReady {
  /** Null: it cannot be had at all. */
  readonly day: PlainDate | null;
  readonly from: "shelf" | "on order" | "to order" | "nowhere";
  /** As a sentence. */
  readonly why: string;
  /** A dearer supplier that would bring it sooner, and the day it could be cut. */
  readonly sooner: { readonly supplier: string; readonly day: PlainDate } | null;
}

/**
 * For each need of the works, the first day it may be cut: today from the shelf; for a lot on order its arrival and inspection; else as the
 * purchase list buys it, ordered today. Counted things from several places wait for the last of them.
 */
export const clothReady = (staging: GoodsOf, works: readonly GarmentWork[], today: PlainDate): ReadonlyMap<Need, ClothReady> => {
  const { supplies, unlisted } = supplyOf(staging, works);
  const ready = new Map<Need, ClothReady>();
  const keepLatest = (need: Need, one: ClothReady) => {
    const known = ready.get(need);
    if (!known || (known.day !== null && (one.day === null || one.day > known.day))) ready.set(need, one);
  };
  for (const supply of supplies) {
    for (const { promised, toBuy } of supply.supplied) {
      for (const { need, lot } of promised) keepLatest(need, fromLot(lot, supply.offers, today));
      for (const { need } of toBuy) keepLatest(need, fromOrder(supply, today));
    }
  }
  for (const [material, needs] of unlisted)
    for (const need of needs) ready.set(need, { day: null, from: "nowhere", why: `${material} is not among the materials.`, sooner: null });
  return ready;
};

const fromLot = (lot: Lot, offers: readonly Offer[], today: PlainDate): ClothReady => {
  if (lot.arrives === null) return { day: today, from: "shelf", why: `Lot ${lot.code} is on hand.`, sooner: null };
  const inspection = Math.max(0, ...offers.map((offer) => offer.inspectionDays));
  const day = addDays(lot.arrives > today ? lot.arrives : today, inspection);
  return { day, from: "on order", why: `Lot ${lot.code} arrives ${showDay(lot.arrives)}; it may be cut ${showDay(day)}.`, sooner: null };
};

const fromOrder = ({ material, choices, offers }: MaterialSupply, today: PlainDate): ClothReady => {
  const [chosen, ...others] = choices;
  if (!chosen) return { day: null, from: "nowhere", why: whyNobody(material.name, offers), sooner: null };
  const { offer } = chosen;
  const day = readyFrom(offer, today);
  const fastest = others
    .map((other) => ({ supplier: other.offer.supplier, day: readyFrom(other.offer, today) }))
    .reduce((best, other) => (other.day < best.day ? other : best), { supplier: offer.supplier, day });
  const why = `Ordered today from ${offer.supplier}, it comes in ${offer.leadDays} days and may be cut ${showDay(day)}.`;
  return { day, from: "to order", why, sooner: fastest.day < day ? fastest : null };
};
