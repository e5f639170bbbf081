import type { MaterialKind } from "#lib/materials/material";
import type { MinorUnits } from "#lib/units/quantities";
import { writeAuditIn } from "../audit";
import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";
import { newId } from "../ids";

/** What a production may spend on each kind of material, as far as that was said. */
export async function loadBudgetShares(company: AuthorizedCompany, productionCode: string): Promise<ReadonlyMap<MaterialKind, MinorUnits>> {
  const rows = await database().budgetShare.findMany({ where: { companyId: company, production: { code: productionCode } } });
  return new Map(rows.map(({ category, amount }) => [category as MaterialKind, Number(amount)]));
}

/** Says what may be spent on a kind of material; null takes it out. False when there is no such production. */
export const keepBudgetShare = (
  company: AuthorizedCompany,
  user: string | null,
  share: { readonly production: string; readonly category: MaterialKind; readonly amount: MinorUnits | null; readonly detail: string },
): Promise<boolean> =>
  database().$transaction(async (tx) => {
    const companyId: string = company;
    const { category, amount, detail } = share;
    const production = await tx.production.findUnique({
      where: { companyId_code: { companyId, code: share.production } },
      select: { id: true },
    });
    if (!production) return false;
    const productionId = production.id;
    const key = { companyId, productionId, category };
    if (amount === null) await tx.budgetShare.deleteMany({ where: key });
    else
      await tx.budgetShare.upsert({
        where: { companyId_productionId_category: key },
        create: { id: newId(), ...key, amount },
        update: { amount },
      });
    await writeAuditIn(tx, companyId, { user, production: productionId, action: "budget", detail });
    return true;
  });
