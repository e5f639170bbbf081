import type { PlainDate } from "#lib/calendar/plainDate";
import type { Quantity } from "#lib/materials/material";
import type { LineTerms } from "#lib/purchasing/order";
import { failed, ok } from "#lib/result";
import type { MinorUnits } from "#lib/units/quantities";
import type { AuthorizedCompany } from "../authorized";
import type { OrderLine } from "../generated/client";
import { newId } from "../ids";
import { databaseDate } from "../plainDates";
import { bookIn } from "../stock/book";
import { refusedOf } from "../stock/changeLot";
import { lockLot } from "../stock/lockLot";
import { changeOrder, type OrderDoing } from "./changeOrder";
import { awaitLine } from "./onOrder";

interface SentBack {
  readonly line: number;
  /** Code of the lot they go back from: one that came with this line. */
  readonly lot: string;
  readonly on: PlainDate;
  readonly quantity: Quantity;
  readonly credit: MinorUnits;
  readonly why: string;
}

/** Goods go back to the supplier: off the shelf, with a credit. What should come again is asked for by a correction of the line. */
export const returnGoods = (company: AuthorizedCompany, sent: SentBack, doing: OrderDoing) =>
  changeOrder(company, doing, { from: ["placed", "closed"], line: sent.line }, async (changing) => {
    const { tx, companyId, order } = changing;
    const line = changing.line as OrderLine;
    const came = await tx.receipt.findFirst({ where: { companyId, lineId: line.id, lot: { code: sent.lot } } });
    const lot = came && (await lockLot(tx, companyId, sent.lot));
    if (!lot) return failed({ kind: "no lot", lot: sent.lot });
    const more = Number(line.returned) + sent.quantity - Number(line.received);
    if (more > 0) return refusedOf(lot, { kind: "too little", short: more });
    const reason = `Order ${order.number}: ${sent.why}`;
    const { productionId } = order;
    const kept = await bookIn(tx, companyId, lot, { kind: "returned", quantity: -sent.quantity, reason, user: doing.user, productionId });
    if (!kept.ok) return refusedOf(lot, kept.error);
    const { on, quantity, credit, why } = sent;
    const day = databaseDate(on);
    await tx.supplierReturn.create({
      data: { id: newId(), companyId, lineId: line.id, lotId: lot.id, byId: doing.user, day, quantity, credit, why },
    });
    await tx.orderLine.update({ where: { companyId_id: { companyId, id: line.id } }, data: { returned: { increment: quantity } } });
    return ok(null);
  });

/** Packs, price or day of a line are put right after it was ordered: what is on order follows, and with it the plan. */
export const correctLine = (
  company: AuthorizedCompany,
  correction: {
    readonly line: number;
    readonly on: PlainDate;
    readonly terms: LineTerms & { readonly promised: PlainDate };
    readonly why: string;
  },
  doing: OrderDoing,
) =>
  changeOrder(company, doing, { from: ["placed"], line: correction.line }, async ({ tx, companyId, order, line }) => {
    const before = line as OrderLine;
    const { packs, pricePerPack, promised } = correction.terms;
    await tx.orderCorrection.create({
      data: {
        ...{ id: newId(), companyId, lineId: before.id, byId: doing.user, day: databaseDate(correction.on), why: correction.why },
        ...{ packsBefore: before.packs, pricePerPackBefore: before.pricePerPack, promisedBefore: before.promised },
        ...{ packsAfter: packs, pricePerPackAfter: pricePerPack, promisedAfter: databaseDate(promised) },
      },
    });
    const now = await tx.orderLine.update({ where: { companyId_id: { companyId, id: before.id } }, data: { packs, pricePerPack } });
    await awaitLine(tx, companyId, order, now, promised);
    return ok(null);
  });
