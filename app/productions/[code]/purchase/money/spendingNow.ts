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
  const { lines = [], carriage = [], garments = [] } = view.plan?.purchase ?? {};
  const toBuy = {
    lines,
    carriage: carriage.reduce((sum, { cost }) => sum + cost, 0),
    garments: garments.reduce((sum, { price }) => sum + price, 0),
  };
  return spendingOf(orders, toBuy, kindOf, budgets);
};
