import { ascending } from "d3-array";
import type { Need } from "#lib/breakdown/work";
import { addDays } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { Production } from "#lib/staging/staging";
import type { Choice } from "./choice";
import { inTime } from "./deliveries";
import type { Promised, Supplied } from "./promise";
import type { LineReason, PurchaseLine } from "./purchase";
import { lineArithmetic, whyTimes } from "./words";

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

export const reasonOf = ({ garment, role, quantity, arithmetic }: Need): LineReason => ({ garment, role, quantity, arithmetic });

/** What each lot gives, in the order the lots are taken. */
export const shelfOf = (promised: readonly Promised[]): PurchaseLine["fromShelf"] => {
  const byLot = new Map<string, number>();
  for (const { lot, quantity } of promised) byLot.set(lot.code, (byLot.get(lot.code) ?? 0) + quantity);
  return [...byLot].map(([lot, quantity]) => ({ lot, quantity }));
};

export const toBuyOf = (supplied: readonly Supplied[]): number =>
  sum(supplied.flatMap(({ toBuy }) => toBuy).map((share) => share.quantity));

/** The line of a material: all its demands that the shelf does not meet whole, as the chosen offer sells it. */
export const lineOf = (
  supplied: readonly Supplied[],
  choice: Choice,
  production: Production,
  neededBy: (need: Need) => PlainDate | null,
): PurchaseLine => {
  const { offer } = choice;
  const plan = choice.plan();
  const demands = supplied.map((one) => one.demand);
  const { code, name, colour, measure } = demands[0]!.material;
  const sets = demands.flatMap(({ set }) => set ?? []);
  const days = supplied.flatMap(({ toBuy }) => toBuy.map(({ need, quantity }) => ({ quantity, day: neededBy(need) })));
  const dated = days.flatMap(({ quantity, day }) => (day === null ? [] : [{ quantity, day }]));
  const first = dated.map(({ day }) => day).sort(ascending)[0] ?? null;
  // What must match comes from one dye lot, so in one order; and a second order would open more packs where the cutting decides.
  const mayPart = sets.length === 0 && choice.byCutting <= choice.byQuantity && dated.length === days.length;
  const times = mayPart ? inTime(offer, dated) : null;
  const deliveries = (times?.deliveries ?? [{ order: choice.order, neededBy: first }]).map(({ order, neededBy: day }) => ({
    packs: order.packs,
    parts: order.parts,
    cost: order.cost,
    neededBy: day,
    orderBy: day === null ? null : addDays(day, -offer.leadDays - offer.inspectionDays),
  }));
  const reckoned = {
    supplier: offer.supplier,
    material: code,
    name,
    colour,
    measure,
    oneLotSet: sets.length > 0 ? sets.join(", ") : null,
    gross: sum(demands.map((demand) => demand.gross)),
    fromShelf: shelfOf(supplied.flatMap(({ promised }) => promised)),
    shrinkage: sum(demands.map((demand) => demand.shrinkage)),
    spare: sum(demands.map((demand) => demand.spare)),
    repair: sum(demands.map((demand) => demand.repair)),
    toBuy: toBuyOf(supplied),
    packs: sum(deliveries.map(({ packs }) => packs)),
    pack: offer.pack,
    pricePerPack: deliveries.at(-1)!.parts.at(-1)!.price,
    cost: sum(deliveries.map(({ cost }) => cost)),
    cut: plan === null || plan.stock === null ? null : { stocks: plan.count, bound: plan.bound, proved: plan.proved },
    deliveries,
    reasons: demands.flatMap((demand) => demand.shares.map((share) => reasonOf(share.need))),
  };
  const oneLot = sets.length > 0 && choice.order.packs > 1 ? [`Ask for one dye lot: ${sets.join(" and ")} must match.`] : [];
  return {
    ...reckoned,
    neededBy: first,
    orderBy: deliveries[0]!.orderBy,
    arithmetic: lineArithmetic(reckoned, demands[0]!.material, choice, production) + whyTimes(times, production),
    warnings: [...supplied.flatMap(({ warnings }) => warnings), ...oneLot],
  };
};
