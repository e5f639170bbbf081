import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";

/** What a page's computed values stand on: while neither changes, nothing need be loaded or computed again. */
export interface Revision {
  readonly inputRevision: number;
  /** The plan `loadCurrentPlan` would give; null when there is none. */
  readonly planId: string | null;
  /** Current plans of the company's other productions: what they take, this one has not. */
  readonly otherPlans: readonly string[];
  /** IANA time zone of the workroom: which day it is there. */
  readonly zone: string;
}

/** The revision of a production, in one small query; null when the company has none of that code. */
export async function loadRevision(company: AuthorizedCompany, productionCode: string): Promise<Revision | null> {
  const row = await database().production.findUnique({
    where: { companyId_code: { companyId: company, code: productionCode } },
    select: {
      inputRevision: true,
      workroom: { select: { zone: true } },
      plans: { select: { id: true }, orderBy: [{ current: "desc" }, { createdAt: "desc" }, { id: "desc" }], take: 1 },
    },
  });
  const others = await database().plan.findMany({
    where: { companyId: company, current: true, production: { code: { not: productionCode } } },
    select: { id: true },
    orderBy: { id: "asc" },
  });
  return (
    row && {
      inputRevision: row.inputRevision,
      planId: row.plans[0]?.id ?? null,
      otherPlans: others.map(({ id }) => id),
      zone: row.workroom.zone,
    }
  );
}
