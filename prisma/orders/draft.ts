import type { PlainDate } from "#lib/calendar/plainDate";
import type { OrderLine } from "#lib/purchasing/order";
import { ok } from "#lib/result";
import type { MinorUnits } from "#lib/units/quantities";
import { writeAuditIn } from "../audit";
import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";
import { newId } from "../ids";
import { databaseDate } from "../plainDates";
import { changeOrder, type OrderDoing } from "./changeOrder";

/** A line as it is asked for. */
export type LineWish = Pick<
  OrderLine,
  | "material"
  | "name"
  | "colour"
  | "pack"
  | "packs"
  | "pricePerPack"
  | "inspectionDays"
  | "oneLotSet"
  | "neededBy"
  | "arithmetic"
  | "garments"
>;

export interface DraftWish {
  readonly production: string;
  readonly supplier: string;
  readonly freight: MinorUnits;
  readonly lines: readonly LineWish[];
  readonly today: PlainDate;
  readonly user: string | null;
}

/** Writes a draft down. Returns its number; null when the production, or a material, is no longer there. */
export const draftOrder = (company: AuthorizedCompany, wish: DraftWish): Promise<number | null> =>
  database().$transaction(async (tx) => {
    const companyId: string = company;
    const production = await tx.production.findUnique({ where: { companyId_code: { companyId, code: wish.production } } });
    const codes = wish.lines.map(({ material }) => material);
    const materials = await tx.material.findMany({ where: { companyId, code: { in: codes } }, select: { id: true, code: true } });
    const ids = new Map(materials.map(({ id, code }) => [code, id]));
    if (!production || codes.some((code) => !ids.has(code))) return null;
    // One number at a time.
    await tx.$queryRaw`select pg_advisory_xact_lock(hashtextextended('order number ' || ${companyId}, 0))::text`;
    const last = await tx.purchaseOrder.aggregate({ where: { companyId }, _max: { number: true } });
    const number = (last._max.number ?? 0) + 1;
    const id = newId();
    await tx.purchaseOrder.create({
      data: {
        ...{ id, companyId, productionId: production.id, number, supplier: wish.supplier, currency: production.currency },
        ...{ freight: wish.freight, draftedOn: databaseDate(wish.today), draftedById: wish.user },
      },
    });
    await tx.orderLine.createMany({
      data: wish.lines.map(({ material, neededBy, garments, ...line }, at) => ({
        ...{ id: newId(), companyId, orderId: id, materialId: ids.get(material) ?? "", line: at + 1 },
        ...{ ...line, garments: [...garments], neededBy: neededBy && databaseDate(neededBy) },
      })),
    });
    const subject = { table: "PurchaseOrder", id };
    const detail = `Order ${number}, ${wish.supplier}: drafted, ${wish.lines.map(({ packs, name }) => `${packs} × ${name}`).join("; ")}`;
    await writeAuditIn(tx, companyId, { user: wish.user, production: production.id, action: "order", subject, detail });
    return number;
  });

/** Changes packs and price of a line before the order is approved; no packs: it falls away when the order is placed. */
export const changeDraft = (
  company: AuthorizedCompany,
  change: { readonly line: number; readonly packs: number; readonly pricePerPack: MinorUnits },
  doing: OrderDoing,
) =>
  changeOrder(company, doing, { from: ["draft"], line: change.line }, async ({ tx, companyId, line }) => {
    const { packs, pricePerPack } = change;
    await tx.orderLine.update({ where: { companyId_id: { companyId, id: line?.id ?? "" } }, data: { packs, pricePerPack } });
    return ok(null);
  });

/** Says what the whole order costs beside its lines, and whatever the supplier should know. */
export const changeTerms = (
  company: AuthorizedCompany,
  change: { readonly freight: MinorUnits; readonly note: string },
  doing: OrderDoing,
) =>
  changeOrder(company, doing, { from: ["draft", "approved", "placed"] }, async ({ tx, companyId, order }) => {
    await tx.purchaseOrder.update({ where: { companyId_id: { companyId, id: order.id } }, data: change });
    return ok(null);
  });
