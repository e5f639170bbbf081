import type { Measure } from "#lib/materials/material";
import { failed, ok, type Result } from "#lib/result";
import type { StockRefusal } from "#lib/stock/movement";
import { writeAuditIn } from "../audit";
import type { AuthorizedCompany } from "../authorized";
import { database, type Transaction } from "../client";
import { raiseRevision } from "../stagings/raiseRevision";
import { type Booking, bookIn } from "./book";
import { type LockedLot, lockLot } from "./lockLot";

/** Why nothing was changed on the shelf. */
export type StockTrouble =
  | { readonly kind: "refused"; readonly refusal: StockRefusal; readonly lot: string; readonly measure: Measure }
  /** No such lot lies on the shelf. */
  | { readonly kind: "no lot"; readonly lot: string }
  /** No such production, set or reservation in the company. */
  | { readonly kind: "gone"; readonly what: "production" | "set" | "reservation" };

/** Who does it, and what the audit says. */
export interface Doing {
  readonly user: string | null;
  readonly detail: string;
  /** Code of the production it is done for; null for the company's own shelf. */
  readonly production: string | null;
}

/** A change under way: the lot is locked, and what is done is of this production. */
export interface Changing {
  readonly tx: Transaction;
  readonly companyId: string;
  readonly lot: LockedLot;
  readonly productionId: string | null;
}

/** Locks a lot, changes it, writes the audit and makes plans stale; or changes nothing and says why. */
export const changeLot = <Value>(
  company: AuthorizedCompany,
  code: string,
  { user, detail, production }: Doing,
  change: (changing: Changing) => Promise<Result<Value, StockTrouble>>,
): Promise<Result<Value, StockTrouble>> =>
  database().$transaction(async (tx) => {
    const companyId: string = company;
    const lot = await lockLot(tx, companyId, code);
    if (!lot) return failed({ kind: "no lot", lot: code });
    const productionId = production === null ? null : await idOfProduction(tx, companyId, production);
    if (productionId === undefined) return failed({ kind: "gone", what: "production" });
    const changed = await change({ tx, companyId, lot, productionId });
    if (!changed.ok) return changed;
    const of = productionId === null ? {} : { production: productionId };
    await writeAuditIn(tx, companyId, { user, ...of, action: "shelf", subject: { table: "Lot", id: lot.id }, detail });
    await raiseRevision(tx, companyId);
    return changed;
  });

const idOfProduction = async (tx: Transaction, companyId: string, code: string): Promise<string | undefined> =>
  (await tx.production.findUnique({ where: { companyId_code: { companyId, code } }, select: { id: true } }))?.id;

/** The booking of a change, or why not. */
export async function booked(
  { tx, companyId, lot, productionId }: Changing,
  booking: Omit<Booking, "productionId">,
): Promise<Result<LockedLot, StockTrouble>> {
  const kept = await bookIn(tx, companyId, lot, { ...booking, productionId });
  return kept.ok ? ok(kept.value) : refusedOf(lot, kept.error);
}

export const refusedOf = (lot: LockedLot, refusal: StockRefusal): Result<never, StockTrouble> =>
  failed({ kind: "refused", refusal, lot: lot.code, measure: lot.measure });
