import { ascending } from "d3-array";
import type { PlainDate } from "#lib/calendar/plainDate";
import { openOf, type ShownOrderState, shownState } from "#lib/purchasing/order";
import { awaitedOf, costOf, receivedOf } from "#lib/purchasing/spending";
import type { MinorUnits } from "#lib/units/quantities";
import type { KeptOrder } from "#prisma/orders/orderRow";

/** An order as the list shows it. */
export interface OrderRow {
  readonly number: string;
  readonly supplier: string;
  readonly state: ShownOrderState;
  readonly what: readonly string[];
  readonly placedOn: PlainDate | null;
  /** The next day something of it is promised for; null when nothing is awaited. */
  readonly promised: PlainDate | null;
  readonly overdue: boolean;
  readonly cost: MinorUnits;
  readonly received: MinorUnits;
  readonly awaited: MinorUnits;
}

export const orderRow = (order: KeptOrder, today: PlainDate): OrderRow => {
  const open = order.state === "placed" ? order.lines.filter((line) => openOf(line) > 0) : [];
  const promised = open.flatMap((line) => line.promised ?? []).sort(ascending)[0] ?? null;
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  return {
    number: order.number,
    supplier: order.supplier,
    state: shownState(order),
    what: order.lines.filter(({ packs }) => packs > 0).map(({ name }) => name),
    placedOn: order.placedOn,
    promised,
    overdue: promised !== null && promised < today,
    cost: costOf(order),
    received: sum(order.lines.map(receivedOf)),
    awaited: sum(order.lines.map((line) => awaitedOf(order, line))),
  };
};
