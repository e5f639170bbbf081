import type { Quantity } from "#lib/materials/material";
import { failed, ok, type Result } from "#lib/result";
import { writeAuditIn } from "../audit";
import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";
import { raiseRevision } from "../stagings/raiseRevision";
import { bookIn } from "./book";
import { type Doing, refusedOf, type StockTrouble } from "./changeLot";
import { lockLot } from "./lockLot";

/** A lot that the register had on order, of no order kept here, has come: it lies on the shelf now. */
export const bookInLot = (
  company: AuthorizedCompany,
  came: { readonly lot: string; readonly quantity: Quantity; readonly location: string; readonly dyeLot: string; readonly reason: string },
  { user, detail }: Doing,
): Promise<Result<null, StockTrouble>> =>
  database().$transaction(async (tx) => {
    const companyId: string = company;
    const { lot: code, quantity, location, dyeLot, reason } = came;
    // In the order of a save of the register, so that neither waits for the other without end.
    await tx.$queryRaw`select id from company where id = ${companyId}::uuid for share`;
    const awaited = { companyId, code, retiredAt: null, arrives: { not: null }, orderLines: { none: {} } };
    const { count } = await tx.lot.updateMany({ where: awaited, data: { arrives: null, quantity: 0, location, dyeLot } });
    const lot = count === 1 ? await lockLot(tx, companyId, code) : null;
    if (!lot) return failed({ kind: "no lot", lot: code });
    const kept = await bookIn(tx, companyId, lot, { kind: "received", quantity, reason, user });
    if (!kept.ok) return refusedOf(lot, kept.error);
    await writeAuditIn(tx, companyId, { user, action: "shelf", subject: { table: "Lot", id: lot.id }, detail });
    await raiseRevision(tx, companyId);
    return ok(null);
  });
