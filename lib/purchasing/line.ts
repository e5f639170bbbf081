import { ascending } from "d3-array";
import type { Need } from "#lib/breakdown/work";
import { addDays } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { Production } from "#lib/staging/staging";
import type { Choice } from "./choice";
import type { Promised, Supplied } from "./promise";
import type { LineReason, PurchaseLine } from "./purchase";
import { lineArithmetic } from "./words";

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
  const { offer, order } = choice;
  const demands = supplied.map((one) => one.demand);
  const { code, name, colour, measure } = demands[0]!.material;
  const sets = demands.flatMap(({ set }) => set ?? []);
  const days = supplied.flatMap(({ toBuy }) => toBuy.map((share) => neededBy(share.need))).filter((day) => day !== null);
  const first = days.sort(ascending)[0] ?? null;
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
    toBuy: toBuyOf(supplied),
    packs: order.packs,
    pack: offer.pack,
    pricePerPack: order.pricePerPack,
    cost: order.cost,
    reasons: demands.flatMap((demand) => demand.shares.map((share) => reasonOf(share.need))),
  };
  const oneLot = sets.length > 0 && order.packs > 1 ? [`Ask for one dye lot: ${sets.join(" and ")} must match.`] : [];
  return {
    ...reckoned,
    neededBy: first,
    orderBy: first === null ? null : addDays(first, -offer.leadDays - offer.inspectionDays),
    arithmetic: lineArithmetic(reckoned, demands[0]!.material, choice, production),
    warnings: [...supplied.flatMap(({ warnings }) => warnings), ...oneLot],
  };
};
