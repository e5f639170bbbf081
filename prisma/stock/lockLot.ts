import type { Measure } from "#lib/materials/material";
import type { LotBalance } from "#lib/stock/movement";
import type { Transaction } from "../client";
import { settleRegister } from "./settleRegister";

/** A lot nobody else can change until the transaction ends. */
export interface LockedLot {
  readonly id: string;
  readonly code: string;
  readonly materialId: string;
  readonly measure: Measure;
  readonly dyeLot: string;
  readonly location: string;
  readonly breadth: number | null;
  readonly balance: LotBalance;
}

interface Row extends Omit<LockedLot, "balance"> {
  readonly quantity: bigint;
  readonly reserved: bigint;
}

/** Locks a lot that lies on the shelf; null when there is none of that code, or it is still on order. */
export async function lockLot(tx: Transaction, companyId: string, code: string): Promise<LockedLot | null> {
  // A save of a staging writes whole registers: it and this wait for each other, and two of these do not.
  await tx.$queryRaw`select id from company where id = ${companyId}::uuid for share`;
  await tx.$queryRaw`select id from lot where company_id = ${companyId}::uuid and code = ${code} for update`;
  // Read only now: what it holds and what is reserved is as whoever had the lock before left it.
  const [row] = await tx.$queryRaw<Row[]>`
    select lot.id, lot.code, lot.material_id as "materialId", material.measure, lot.dye_lot as "dyeLot", lot.location, lot.breadth, lot.quantity,
      (select coalesce(sum(quantity), 0)::bigint from reservation
        where company_id = lot.company_id and lot_id = lot.id and state = 'held') as reserved
    from lot join material on material.company_id = lot.company_id and material.id = lot.material_id
    where lot.company_id = ${companyId}::uuid and lot.code = ${code} and lot.retired_at is null and lot.arrives is null`;
  if (!row) return null;
  await settleRegister(tx, companyId, row.id);
  const { quantity, reserved, ...lot } = row;
  return { ...lot, balance: { onHand: Number(quantity), reserved: Number(reserved) } };
}
