import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";

/** A kept plan of a production, without its rows. */
export interface ListedPlan {
  readonly planId: string;
  readonly name: string;
  /** The production works by it. */
  readonly current: boolean;
  readonly createdAt: Date;
  /** When the production last began to work by it; null for a what-if that was never published. */
  readonly publishedAt: Date | null;
}

/** The newest plans of a production; what it worked by last comes first. */
export async function listPlans(company: AuthorizedCompany, productionId: string, most: number): Promise<readonly ListedPlan[]> {
  const rows = await database().plan.findMany({
    where: { companyId: company, productionId },
    select: { id: true, name: true, current: true, createdAt: true, publishedAt: true },
    orderBy: [{ publishedAt: { sort: "desc", nulls: "last" } }, { createdAt: "desc" }, { id: "desc" }],
    take: most,
  });
  return rows.map(({ id, ...row }) => ({ planId: id, ...row }));
}
