import type { MaterialKind } from "#lib/materials/material";
import { type Spending, spendingOf } from "#lib/purchasing/spending";
import { loadOrders } from "#prisma/orders/load";
import { loadBudgetShares } from "#prisma/stock/budgetShares";
import type { ProductionView } from "../../../../_data/stagingPlan";
import type { Member } from "../../../../_gate/member";

/** The money of a production by category, as it stands today. */
export const spendingNow = async (member: Member, view: ProductionView): Promise<readonly Spending[]> => {
  const { production, materials } = view.prepared.staging;
  const [orders, budgets] = await Promise.all([
    loadOrders(member.company, production.code),
    loadBudgetShares(member.company, production.code),
  ]);
  const kinds = new Map(materials.map(({ code, kind }) => [code, kind]));
  const kindOf = (material: string): MaterialKind => kinds.get(material) ?? "bought";
  return spendingOf(orders, view.plan?.purchase.lines ?? [], kindOf, budgets);
};
