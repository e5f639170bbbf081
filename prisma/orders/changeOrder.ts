import type { OrderState } from "#lib/purchasing/order";
import { failed, type Result } from "#lib/result";
import { writeAuditIn } from "../audit";
import type { AuthorizedCompany } from "../authorized";
import { database, type Transaction } from "../client";
import type { OrderLine, PurchaseOrder } from "../generated/client";
import { raiseRevision } from "../stagings/raiseRevision";
import type { StockTrouble } from "../stock/changeLot";
import { stateOf } from "./orderRow";

/** Why nothing was changed. */
export type OrderTrouble =
  | StockTrouble
  | { readonly kind: "no order" }
  /** Somebody else changed it since it was looked at. */
  | { readonly kind: "changed" }
  /** It is not, or no longer, in a state in which this is done. */
  | { readonly kind: "state"; readonly state: OrderState };

/** Which order is meant, as it was looked at, and who does it. */
export interface OrderDoing {
  readonly production: string;
  readonly number: number;
  /** Version of the order, or of the line that is changed. */
  readonly version: number;
  readonly user: string | null;
  /** What the audit says. */
  readonly detail: string;
}

/** An order under way: it is locked. */
export interface ChangingOrder {
  readonly tx: Transaction;
  readonly companyId: string;
  readonly order: PurchaseOrder;
}

interface Rules {
  /** States in which it may be done. */
  readonly from: readonly OrderState[];
  /** The version is of this line instead of the order. */
  readonly line?: number;
}

/** Locks an order of a production, changes it, writes the audit and makes plans stale; or changes nothing and says why. */
export const changeOrder = <Value>(
  company: AuthorizedCompany,
  { production, number, version, user, detail }: OrderDoing,
  { from, line }: Rules,
  change: (changing: ChangingOrder & { readonly line: OrderLine | null }) => Promise<Result<Value, OrderTrouble>>,
): Promise<Result<Value, OrderTrouble>> =>
  database().$transaction(async (tx) => {
    const companyId: string = company;
    // A save of a staging writes the register of lots: it and this wait for each other.
    await tx.$queryRaw`select id from company where id = ${companyId}::uuid for share`;
    await tx.$queryRaw`select id from purchase_order where company_id = ${companyId}::uuid and number = ${number} for update`;
    const order = await tx.purchaseOrder.findFirst({ where: { companyId, number, production: { code: production } } });
    if (!order) return failed({ kind: "no order" });
    const state = stateOf(order);
    if (!from.includes(state)) return failed({ kind: "state", state });
    const key = { companyId, orderId: order.id, line: line ?? 0 };
    const of = line === undefined ? null : await tx.orderLine.findUnique({ where: { companyId_orderId_line: key } });
    if (line !== undefined && !of) return failed({ kind: "no order" });
    if ((of ?? order).version !== version) return failed({ kind: "changed" });
    const changed = await change({ tx, companyId, order, line: of });
    if (!changed.ok) return changed;
    const counted = { version: { increment: 1 } };
    await tx.purchaseOrder.update({ where: { companyId_id: { companyId, id: order.id } }, data: counted });
    if (of) await tx.orderLine.update({ where: { companyId_id: { companyId, id: of.id } }, data: counted });
    const subject = { table: "PurchaseOrder", id: order.id };
    await writeAuditIn(tx, companyId, { user, production: order.productionId, action: "order", subject, detail });
    await raiseRevision(tx, companyId);
    return changed;
  });
