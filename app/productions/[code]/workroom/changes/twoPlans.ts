import { assemble } from "#lib/planning/assemble";
import { restorePlan } from "#lib/planning/restore";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { AuthorizedCompany } from "#prisma/authorized";
import { type ListedPlan, listPlans } from "#prisma/plans/list";
import { loadPlan } from "#prisma/plans/load";
import type { ProductionView } from "../../../../_data/stagingPlan";

/** So many plans are offered to be laid beside the one that is worked by. */
const MOST_PLANS = 8;

/** The plan that is worked by, beside another: the one asked for, else the one before it. */
export interface TwoPlans {
  readonly now: ListedPlan | undefined;
  readonly others: readonly ListedPlan[];
  readonly chosen: ListedPlan | undefined;
  /** Read beside the data of today; null when there is none to compare. */
  readonly before: StagingPlan | null;
}

export const twoPlans = async (company: AuthorizedCompany, view: ProductionView, asked: string | undefined): Promise<TwoPlans> => {
  const listed = await listPlans(company, view.productionId, MOST_PLANS + 1);
  const now = listed.find(({ planId }) => planId === view.planId);
  const others = listed.filter(({ planId }) => planId !== view.planId);
  const chosen = others.find(({ planId }) => planId === asked) ?? others[0];
  const kept = chosen && (await loadPlan(company, view.productionId, chosen.planId));
  return { now, others, chosen, before: kept ? assemble(view.prepared, restorePlan(view.prepared, kept.plan)) : null };
};
