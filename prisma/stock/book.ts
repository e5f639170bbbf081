import { failed, ok, type Result } from "#lib/result";
import { book, type MovementKind, type StockRefusal } from "#lib/stock/movement";
import type { Transaction } from "../client";
import { newId } from "../ids";
import type { LockedLot } from "./lockLot";

/** What is written down about a change of what a lot holds. */
export interface Booking {
  readonly kind: MovementKind;
  /** Positive in, negative out. */
  readonly quantity: number;
  readonly reason: string;
  readonly user: string | null;
  readonly productionId?: string | null;
  readonly garments?: readonly string[];
  /** The reservation it uses up, and how much of it. */
  readonly uses?: { readonly id: string; readonly quantity: number };
}

/** Changes what a locked lot holds and keeps the movement, or refuses and writes nothing. */
export async function bookIn(
  tx: Transaction,
  companyId: string,
  lot: LockedLot,
  { kind, quantity, reason, user, productionId = null, garments = [], uses }: Booking,
): Promise<Result<LockedLot, StockRefusal>> {
  const balance = book(lot.balance, quantity, uses?.quantity ?? 0);
  if (!balance.ok) return failed(balance.error);
  const { onHand } = balance.value;
  await tx.lot.update({ where: { companyId_id: { companyId, id: lot.id } }, data: { quantity: onHand, version: { increment: 1 } } });
  await tx.movement.create({
    data: {
      ...{ id: newId(), companyId, lotId: lot.id, productionId, byId: user, kind, quantity, left: onHand, reason },
      ...{ garments: [...garments], reservationId: uses?.id ?? null },
    },
  });
  return ok({ ...lot, balance: balance.value });
}
