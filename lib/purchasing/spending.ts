import { ascending } from "d3-array";
import type { MaterialKind } from "#lib/materials/material";
import type { MinorUnits } from "#lib/units/quantities";
import { type Order, type OrderLine, openOf } from "./order";
import type { PurchaseLine } from "./purchase";

/** What so much of a pack costs, to the nearest minor unit; halves upward. */
const worth = (quantity: number, { pack, pricePerPack }: Pick<OrderLine, "pack" | "pricePerPack">): MinorUnits =>
  Math.floor((quantity * pricePerPack) / pack + 0.5);

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Spent on a line: what was charged for what came, or its price, less what was given back. */
export const receivedOf = (line: OrderLine): MinorUnits =>
  sum(line.receipts.map(({ quantity, charged }) => charged ?? worth(quantity, line))) - sum(line.returns.map(({ credit }) => credit));

/** Promised for what is still to come; nothing unless the order is placed. */
export const awaitedOf = (order: Pick<Order, "state">, line: OrderLine): MinorUnits =>
  order.state === "placed" ? worth(openOf(line), line) : 0;

/** Cost of a whole order as it stands, freight included: what came and what is to come, or, before it is placed, what is asked for. */
export const costOf = (order: Order): MinorUnits => {
  if (order.state === "cancelled") return 0;
  const asked = order.state === "draft" || order.state === "approved";
  const lines = order.lines.map((line) => (asked ? line.packs * line.pricePerPack : receivedOf(line) + awaitedOf(order, line)));
  return sum(lines) + order.freight;
};

/** Where the money of one category stands. `forecast` is what it will have come to at the end. */
export interface Spending {
  /** Kind of material, carriage, or garments bought and hired whole. */
  readonly category: MaterialKind | "carriage" | "garments";
  readonly budget: MinorUnits | null;
  readonly received: MinorUnits;
  /** Ordered and still to come. */
  readonly committed: MinorUnits;
  /** On the purchase list, ordered by nobody yet. */
  readonly toBuy: MinorUnits;
  readonly forecast: MinorUnits;
}

/** What the purchase list comes to: its lines, carriage, and garments bought or hired whole. */
interface YetToBuy {
  readonly lines: readonly Pick<PurchaseLine, "material" | "cost">[];
  readonly carriage: MinorUnits;
  readonly garments: MinorUnits;
}

/**
 * Money by category: what came, what is ordered and still to come, what is yet to buy, and their sum. Orders that are not placed are part of
 * what is yet to buy, since the purchase list counts on nothing before it is ordered. Carriage of a placed order is committed until
 * something has come, then received.
 */
export const spendingOf = (
  orders: readonly Order[],
  toBuy: YetToBuy,
  kindOf: (material: string) => MaterialKind,
  budgets: ReadonlyMap<string, MinorUnits>,
): readonly Spending[] => {
  const cells = new Map<Spending["category"], { received: number; committed: number; toBuy: number }>();
  const cell = (category: Spending["category"]) => {
    const known = cells.get(category) ?? { received: 0, committed: 0, toBuy: 0 };
    cells.set(category, known);
    return known;
  };
  for (const order of orders.filter(({ state }) => state === "placed" || state === "closed")) {
    for (const line of order.lines) {
      const into = cell(kindOf(line.material));
      into.received += receivedOf(line);
      into.committed += awaitedOf(order, line);
    }
    const came = order.lines.some((line) => line.receipts.length > 0);
    if (order.freight > 0) cell("carriage")[came ? "received" : "committed"] += order.freight;
  }
  for (const line of toBuy.lines) cell(kindOf(line.material)).toBuy += line.cost;
  if (toBuy.carriage > 0) cell("carriage").toBuy += toBuy.carriage;
  if (toBuy.garments > 0) cell("garments").toBuy += toBuy.garments;
  for (const category of budgets.keys()) cell(category as Spending["category"]);
  return [...cells]
    .map(([category, money]) => ({
      category,
      budget: budgets.get(category) ?? null,
      ...money,
      forecast: money.received + money.committed + money.toBuy,
    }))
    .sort((a, b) => b.forecast - a.forecast || ascending(a.category, b.category));
};
