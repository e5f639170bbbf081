import { ascending } from "d3-array";
import { dayNumber } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { Offer, Quantity } from "#lib/materials/material";
import type { MinorUnits, PerMille } from "#lib/units/quantities";
import { wagnerWhitin } from "./lotSizing/wagnerWhitin";
import { cheapestOrder, type PackOrder } from "./packs";

/** What keeping goods costs a year, of their price: the money in them and the shelf they take (common practice, no source). */
export const HOLDING: PerMille = 200;

/** One order of a material among those it is bought in. */
export interface Delivery {
  readonly order: PackOrder;
  /** First day that it is cut. */
  readonly neededBy: PlainDate;
}

/** When a material is ordered, and what that was weighed against. */
export interface InTime {
  readonly deliveries: readonly Delivery[];
  /** Goods, carriage and keeping: as ordered, and all at once. */
  readonly cost: MinorUnits;
  readonly atOnce: MinorUnits;
}

/**
 * One order or several, whichever costs least with carriage and keeping (Wagner-Whitin by weeks). Null when that is no question: all is cut in
 * one week, nothing is charged for an order, or all the keeping there is costs less than a second order, so that one is proved best.
 */
export const inTime = (offer: Offer, needs: readonly { readonly quantity: Quantity; readonly day: PlainDate }[]): InTime | null => {
  if (offer.orderCost === 0 || needs.length === 0) return null;
  const first = firstOf(needs);
  const weekOf = (day: PlainDate) => Math.floor((dayNumber(day) - dayNumber(first)) / 7);
  const demand: number[] = [];
  for (const { quantity, day } of needs) demand[weekOf(day)] = (demand[weekOf(day)] ?? 0) + quantity;
  const weeks = Array.from({ length: demand.length }, (_, week) => demand[week] ?? 0);
  const packed = (quantity: Quantity) => cheapestOrder(offer, Math.ceil(quantity / offer.pack));
  const holding = (packed(weeks.reduce((sum, quantity) => sum + quantity, 0)).pricePerPack / offer.pack) * (HOLDING / 1000 / 52);
  const order = (_week: number, quantity: Quantity) => offer.orderCost + packed(quantity).cost;
  const kept = weeks.reduce((sum, quantity, week) => sum + quantity * week, 0) * holding;
  if (weeks.length < 2 || kept <= offer.orderCost) return null;
  const plan = wagnerWhitin({ demand: weeks, order, holding });
  const all = weeks.reduce((sum, quantity) => sum + quantity, 0);
  const firstDay = (from: number) => firstOf(needs.filter((need) => weekOf(need.day) >= from));
  return {
    deliveries: plan.lots.flatMap((lot, week) => (lot > 0 ? [{ order: packed(lot), neededBy: firstDay(week) }] : [])),
    cost: Math.round(plan.cost),
    atOnce: Math.round(order(0, all) + kept),
  };
};

const firstOf = (needs: readonly { readonly day: PlainDate }[]): PlainDate => needs.map(({ day }) => day).sort(ascending)[0]!;
