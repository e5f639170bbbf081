import type { GarmentWork, Need } from "#lib/breakdown/work";
import { addDays, dayNumber, plainDate } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { GarmentSet } from "#lib/casting/wardrobe";
import type { Lot, Material, Offer, Quantity } from "#lib/materials/material";
import { demandsOf } from "./demand";
import { grossToNet } from "./lotSizing/grossToNet";
import type { PurchaseLine } from "./purchase";

/** One week of one material, spare and washing included. */
export interface MaterialWeek {
  /** Monday. */
  readonly week: PlainDate;
  /** Cut in this week. What the plan gives no day is in the first. */
  readonly needed: Quantity;
  /** May be cut from this week on: lots on order, with their inspection. */
  readonly due: Quantity;
  /** Short before anything new is ordered. */
  readonly short: Quantity;
  /** Of the purchase list, when it must be there. */
  readonly bought: Quantity;
  /** To be ordered in this week, so that it is there in time. */
  readonly toOrder: Quantity;
  /** At the week's end, with what is bought. Less than nothing where the purchase list covers less than is needed by then. */
  readonly left: Quantity;
}

const mondayOf = (day: PlainDate): number => Math.floor((dayNumber(day) + 3) / 7) * 7 - 3;

/**
 * A material gross to net over the weeks of the plan: on hand and due against what is cut, what is short, and when it must be ordered and be
 * there. `lots` are those free for this production: what others have reserved is not in them.
 */
export const inWeeks = (
  material: Material,
  goods: {
    readonly lots: readonly Lot[];
    readonly offers: readonly Offer[];
    readonly lines: readonly PurchaseLine[];
    readonly sets?: readonly GarmentSet[];
  },
  works: readonly GarmentWork[],
  cutOn: (need: Need) => PlainDate | null,
  today: PlainDate,
): readonly MaterialWeek[] => {
  const shares = demandsOf([material], works, goods.sets).demands.flatMap((demand) => demand.shares);
  const lots = goods.lots.filter((lot) => lot.material === material.code);
  const lines = goods.lines.filter((line) => line.material === material.code);
  const inspection = Math.max(0, ...goods.offers.filter((offer) => offer.material === material.code).map((offer) => offer.inspectionDays));
  const start = mondayOf(today);
  const weekOf = (day: PlainDate | null) => Math.max(0, day === null ? 0 : Math.floor((mondayOf(day) - start) / 7));
  const last = [...shares.map(({ need }) => cutOn(need)), ...lots.map(({ arrives }) => arrives)].reduce(
    (most, day) => Math.max(most, weekOf(day)),
    0,
  );
  const byWeek = (items: readonly (readonly [PlainDate | null, Quantity])[]) => {
    const weeks = Array.from({ length: last + 2 }, () => 0);
    for (const [day, quantity] of items) weeks[Math.min(weekOf(day), last + 1)]! += quantity;
    return weeks;
  };
  const needed = byWeek(shares.map(({ need, quantity }) => [cutOn(need), quantity] as const));
  const due = byWeek(
    lots.flatMap(({ arrives, quantity }) => (arrives === null ? [] : [[addDays(arrives, inspection), quantity] as const])),
  );
  const deliveries = lines.flatMap((line) => line.deliveries.map((delivery) => ({ ...delivery, quantity: delivery.packs * line.pack })));
  const bought = byWeek(deliveries.map(({ neededBy, quantity }) => [neededBy, quantity] as const));
  const toOrder = byWeek(deliveries.map(({ orderBy, quantity }) => [orderBy, quantity] as const));
  const onHand = lots.reduce((sum, { arrives, quantity }) => sum + (arrives === null ? quantity : 0), 0);
  const { net } = grossToNet({ gross: needed, scheduled: due, onHand, safety: 0, lead: 0 }, { kind: "lot for lot" });
  let left = onHand;
  return needed.map((quantity, week) => {
    left += due[week]! + bought[week]! - quantity;
    return {
      week: plainDate(start + 7 * week),
      ...{ needed: quantity, due: due[week]!, short: net[week]!, bought: bought[week]!, toOrder: toOrder[week]!, left },
    };
  });
};
