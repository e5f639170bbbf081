/** A material over time: what is needed, what is on order, what is here. Periods of equal length, the first is 0. */
export interface Requirements {
  readonly gross: readonly number[];
  /** Due in each period from orders already placed. */
  readonly scheduled: readonly number[];
  readonly onHand: number;
  /** Never to fall below. */
  readonly safety: number;
  /** Whole periods from order to delivery. */
  readonly lead: number;
}

/** How lots are made of net requirements. */
export type LotRule =
  | { readonly kind: "lot for lot" }
  | { readonly kind: "fixed"; readonly quantity: number }
  | { readonly kind: "periods"; readonly periods: number };

/** Gross to net, period by period. */
export interface NetRecord {
  readonly projected: readonly number[];
  /** Short in each period before anything new is ordered. */
  readonly net: readonly number[];
  readonly receipts: readonly number[];
  /** Orders by the period they must be placed in. */
  readonly releases: readonly number[];
  /** Receipts that should have been ordered before period 0: they come late by their lead time. */
  readonly overdue: readonly { readonly period: number; readonly quantity: number; readonly late: number }[];
}

/**
 * Gross requirements less what is on hand and due, made into lots, and the lots moved earlier by their lead time (material requirements
 * planning; the record of every operations textbook).
 */
export const grossToNet = ({ gross, scheduled, onHand, safety, lead }: Requirements, rule: LotRule): NetRecord => {
  const receipts = gross.map(() => 0);
  const net = gross.map(() => 0);
  const projected: number[] = [];
  let left = onHand;
  for (const [period, need] of gross.entries()) {
    left += (scheduled[period] ?? 0) - need;
    if (left < safety) {
      net[period] = safety - left;
      receipts[period] = lotOf(period, net[period]!, rule, gross, scheduled);
      left += receipts[period]!;
    }
    projected.push(left);
  }
  const releases = gross.map((_, period) => receipts[period + lead] ?? 0);
  const overdue = receipts.flatMap((quantity, period) =>
    quantity > 0 && period < lead ? [{ period, quantity, late: lead - period }] : [],
  );
  return { projected, net, receipts, releases, overdue };
};

const lotOf = (period: number, short: number, rule: LotRule, gross: readonly number[], scheduled: readonly number[]): number => {
  if (rule.kind === "lot for lot") return short;
  if (rule.kind === "fixed") return Math.ceil(short / rule.quantity) * rule.quantity;
  let lot = short;
  for (let next = period + 1; next < Math.min(gross.length, period + rule.periods); next++)
    lot += Math.max(0, gross[next]! - (scheduled[next] ?? 0));
  return lot;
};
