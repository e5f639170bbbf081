import type { PlainDate } from "#lib/calendar/plainDate";
import { failed, ok } from "#lib/result";
import type { AuthorizedCompany } from "../authorized";
import { databaseDate } from "../plainDates";
import { changeOrder, type OrderDoing } from "./changeOrder";
import { awaitLine, dropAwaited } from "./onOrder";

/** Whoever answers for the money agrees. An approval is taken back by `reopen`. */
export const approveOrder = (company: AuthorizedCompany, on: PlainDate, doing: OrderDoing) =>
  changeOrder(company, doing, { from: ["draft"] }, async ({ tx, companyId, order }) => {
    const data = { approvedOn: databaseDate(on), approvedById: doing.user };
    await tx.purchaseOrder.update({ where: { companyId_id: { companyId, id: order.id } }, data });
    return ok(null);
  });

export const reopenOrder = (company: AuthorizedCompany, doing: OrderDoing) =>
  changeOrder(company, doing, { from: ["approved"] }, async ({ tx, companyId, order }) => {
    const data = { approvedOn: null, approvedById: null };
    await tx.purchaseOrder.update({ where: { companyId_id: { companyId, id: order.id } }, data });
    return ok(null);
  });

/**
 * The order goes out: each line with packs is awaited on the day the supplier promises, and is a lot on order from now on, so that the plan
 * counts on that day. `promised` by line; a line without a day of its own is promised for `otherwise`.
 */
export const placeOrder = (
  company: AuthorizedCompany,
  placed: { readonly on: PlainDate; readonly promised: ReadonlyMap<number, PlainDate>; readonly otherwise: PlainDate },
  doing: OrderDoing,
) =>
  changeOrder(company, doing, { from: ["approved"] }, async ({ tx, companyId, order }) => {
    const lines = await tx.orderLine.findMany({ where: { companyId, orderId: order.id, packs: { gt: 0 } }, orderBy: { line: "asc" } });
    if (lines.length === 0) return failed({ kind: "state", state: "draft" });
    const data = { placedOn: databaseDate(placed.on) };
    await tx.purchaseOrder.update({ where: { companyId_id: { companyId, id: order.id } }, data });
    for (const line of lines) await awaitLine(tx, companyId, order, line, placed.promised.get(line.line) ?? placed.otherwise);
    return ok(null);
  });

/** Nothing more is expected: what has not come falls away. */
export const closeOrder = (company: AuthorizedCompany, on: PlainDate, doing: OrderDoing) =>
  changeOrder(company, doing, { from: ["placed"] }, async ({ tx, companyId, order }) => {
    await tx.purchaseOrder.update({ where: { companyId_id: { companyId, id: order.id } }, data: { closedOn: databaseDate(on) } });
    await dropAwaited(tx, companyId, order.id);
    return ok(null);
  });

/** The order is called off. One of which something came is closed instead. */
export const cancelOrder = (company: AuthorizedCompany, on: PlainDate, doing: OrderDoing) =>
  changeOrder(company, doing, { from: ["draft", "approved", "placed"] }, async ({ tx, companyId, order }) => {
    const came = await tx.orderLine.count({ where: { companyId, orderId: order.id, received: { gt: 0 } } });
    if (came > 0) return failed({ kind: "state", state: "placed" });
    await tx.purchaseOrder.update({ where: { companyId_id: { companyId, id: order.id } }, data: { cancelledOn: databaseDate(on) } });
    await dropAwaited(tx, companyId, order.id);
    return ok(null);
  });
