import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";
import { asOrder, type KeptOrder, orderWith } from "./orderRow";

/** The orders of a production, the newest first. */
export async function loadOrders(company: AuthorizedCompany, productionCode: string): Promise<readonly KeptOrder[]> {
  const rows = await database().purchaseOrder.findMany({
    where: { companyId: company, production: { code: productionCode } },
    include: orderWith,
    orderBy: { number: "desc" },
  });
  return rows.map(asOrder);
}

/** One order of a production; null when it has none of that number. */
export async function loadOrder(company: AuthorizedCompany, productionCode: string, number: number): Promise<KeptOrder | null> {
  const row = await database().purchaseOrder.findFirst({
    where: { companyId: company, number, production: { code: productionCode } },
    include: orderWith,
  });
  return row && asOrder(row);
}
