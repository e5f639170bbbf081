import type { PlainDate } from "#lib/calendar/plainDate";
import type { Quantity } from "#lib/materials/material";
import { failed, ok, type Result } from "#lib/result";
import type { MinorUnits } from "#lib/units/quantities";
import type { AuthorizedCompany } from "../authorized";
import type { OrderLine } from "../generated/client";
import { newId } from "../ids";
import { databaseDate, plainDate } from "../plainDates";
import { bookIn } from "../stock/book";
import { refusedOf } from "../stock/changeLot";
import { lockLot } from "../stock/lockLot";
import { type ChangingOrder, changeOrder, type OrderDoing, type OrderTrouble } from "./changeOrder";
import { awaitLine } from "./onOrder";

interface Delivered {
  readonly line: number;
  readonly on: PlainDate;
  /** As measured or counted. */
  readonly quantity: Quantity;
  readonly dyeLot: string;
  readonly location: string;
  /** What the supplier charged; null: as ordered. */
  readonly charged: MinorUnits | null;
  readonly note: string;
}

/** Goods of a line came: they are a lot on the shelf, and so much less is awaited. Returns the lot's code. */
export const receiveGoods = (
  company: AuthorizedCompany,
  delivered: Delivered,
  doing: OrderDoing,
): Promise<Result<{ readonly lot: string }, OrderTrouble>> =>
  changeOrder(company, doing, { from: ["placed"], line: delivered.line }, async (changing) => {
    const { tx, companyId } = changing;
    const line = changing.line as OrderLine;
    const lot = await newLot(changing, line, delivered);
    const locked = await lockLot(tx, companyId, lot.code);
    if (!locked) return failed({ kind: "no lot", lot: lot.code });
    const { productionId } = changing.order;
    const reason = [`Order ${changing.order.number}.`, delivered.note].join(" ").trim();
    const kept = await bookIn(tx, companyId, locked, {
      kind: "received",
      quantity: delivered.quantity,
      reason,
      user: doing.user,
      productionId,
    });
    if (!kept.ok) return refusedOf(locked, kept.error);
    const { on, quantity, charged, note } = delivered;
    const day = databaseDate(on);
    await tx.receipt.create({
      data: { id: newId(), companyId, lineId: line.id, lotId: lot.id, byId: doing.user, day, quantity, charged, note },
    });
    const now = await tx.orderLine.update({
      where: { companyId_id: { companyId, id: line.id } },
      data: { received: { increment: quantity } },
    });
    // What must match was asked for of one dye lot: the rest is awaited of the one that came.
    const dyeLot = line.oneLotSet === null ? undefined : delivered.dyeLot;
    if (now.promised) await awaitLine(tx, companyId, changing.order, now, plainDate(now.promised), dyeLot);
    return ok({ lot: lot.code });
  });

/** Letters for the lots of a line, in the order they come: a to z, then aa. */
const letters = (count: number): string => {
  const last = String.fromCharCode(97 + (count % 26));
  return count < 26 ? last : letters(Math.floor(count / 26) - 1) + last;
};

async function newLot({ tx, companyId, order }: ChangingOrder, line: OrderLine, { dyeLot, location }: Delivered) {
  const before = await tx.receipt.count({ where: { companyId, lineId: line.id } });
  const code = `O${order.number}-${line.line}${letters(before)}`;
  const { materialId } = line;
  return tx.lot.create({
    data: { id: newId(), companyId, materialId, code, dyeLot, location, quantity: 0 },
    select: { id: true, code: true },
  });
}
