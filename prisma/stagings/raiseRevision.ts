import type { Transaction } from "../client";

/** Something the plans of every production of a company are computed from has changed: they are stale. */
export async function raiseRevision(tx: Transaction, companyId: string): Promise<void> {
  await tx.production.updateMany({ where: { companyId }, data: { inputRevision: { increment: 1 } } });
}
