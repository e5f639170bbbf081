import type { Transaction } from "../client";

/**
 * Where a file or an edit of the register has changed what a lot holds, a movement says so: what is on the shelf is always the sum of its
 * movements. All lots of the company, or one.
 */
export async function settleRegister(tx: Transaction, companyId: string, lotId: string | null = null): Promise<void> {
  await tx.$executeRaw`
    insert into movement (id, company_id, lot_id, kind, quantity, "left", reason, garments)
    select gen_random_uuid(), lot.company_id, lot.id, 'register', lot.quantity - coalesce(moved.sum, 0), lot.quantity, 'As the register of lots says.', '{}'
    from lot left join (select lot_id, sum(quantity)::bigint from movement where company_id = ${companyId}::uuid group by lot_id) moved on moved.lot_id = lot.id
    where lot.company_id = ${companyId}::uuid and (${lotId}::uuid is null or lot.id = ${lotId}::uuid)
      and lot.arrives is null and lot.quantity <> coalesce(moved.sum, 0)`;
}
