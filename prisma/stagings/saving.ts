import type { Transaction } from "../client";

/** What every part of a save works with. */
export interface Saving {
  readonly tx: Transaction;
  readonly companyId: string;
  readonly workroomId: string;
  readonly productionId: string;
  /**
   * The company has no other production: then the staging is the whole truth about the company's registers too, and what it does
   * not list is retired. Beside another production they only grow, since the other may need what this one does not name.
   */
  readonly sole: boolean;
}

/** Takes out of use the rows of a register that a sole production does not list. */
export async function retireMissing(
  saving: Saving,
  register: "sizeGroup" | "performer" | "maker" | "machine" | "material" | "lot",
  codes: readonly string[],
): Promise<void> {
  if (!saving.sole) return;
  const where = { companyId: saving.companyId, code: { notIn: [...codes] }, retiredAt: null };
  const retire = { where, data: { retiredAt: new Date(), version: { increment: 1 } } };
  // One signature for six tables alike.
  const table = saving.tx[register] as unknown as { updateMany(change: typeof retire): Promise<unknown> };
  await table.updateMany(retire);
}

/** Ids by code, of rows that have both. */
export const idsByCode = (rows: readonly { readonly id: string; readonly code: string }[]): ReadonlyMap<string, string> =>
  new Map(rows.map((row) => [row.code, row.id]));
