import type { Quantity } from "#lib/materials/material";
import { failed, ok, type Result } from "#lib/result";
import { reserve } from "#lib/stock/movement";
import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";
import { newId } from "../ids";
import { changeLot, type Doing, refusedOf, type StockTrouble } from "./changeLot";
import { heldAs } from "./held";

/** Keeps so much of a lot for a production, or for one of its sets. Returns the reservation's code. */
export const reserveLot = (
  company: AuthorizedCompany,
  wish: {
    readonly lot: string;
    readonly set: string | null;
    readonly garments: readonly string[];
    readonly quantity: Quantity;
    readonly reason: string;
  },
  doing: Doing & { readonly production: string },
): Promise<Result<{ readonly code: string }, StockTrouble>> =>
  changeLot(company, wish.lot, doing, async ({ tx, companyId, lot, productionId }) => {
    if (productionId === null) return failed({ kind: "gone", what: "production" });
    const balance = reserve(lot.balance, wish.quantity);
    if (!balance.ok) return refusedOf(lot, balance.error);
    const key = { companyId, productionId, code: wish.set ?? "" };
    const set = wish.set === null ? null : await tx.garmentSet.findUnique({ where: { companyId_productionId_code: key } });
    if (wish.set !== null && !set) return failed({ kind: "gone", what: "set" });
    const { id: code } = await tx.reservation.create({
      data: {
        ...{ id: newId(), companyId, lotId: lot.id, productionId, setId: set?.id ?? null, byId: doing.user },
        ...{ quantity: wish.quantity, garments: [...wish.garments], reason: wish.reason, state: "held" },
      },
    });
    return ok({ code });
  });

/** Gives a reservation up. */
export async function releaseReservation(company: AuthorizedCompany, code: string, doing: Doing): Promise<Result<null, StockTrouble>> {
  const gone = failed({ kind: "gone", what: "reservation" } as const);
  const row = await database().reservation.findUnique({
    where: { companyId_id: { companyId: company, id: code } },
    include: { lot: { select: { code: true } } },
  });
  if (!row) return gone;
  return changeLot(company, row.lot.code, doing, async (changing) => {
    const held = await heldAs(changing, code);
    if (!held) return gone;
    const { tx, companyId } = changing;
    await tx.reservation.update({ where: { companyId_id: { companyId, id: code } }, data: { state: "released" } });
    return ok(null);
  });
}
