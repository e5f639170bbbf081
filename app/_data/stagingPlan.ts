import { cache } from "react";
import type { PlainDate } from "#lib/calendar/plainDate";
import { assemble } from "#lib/planning/assemble";
import type { Prepared } from "#lib/planning/prepared";
import { restorePlan } from "#lib/planning/restore";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { withFoundCuts } from "#lib/planning/withFoundCuts";
import type { AuthorizedCompany } from "#prisma/authorized";
import { loadCurrentPlan } from "#prisma/plans/load";
import { listProductions } from "#prisma/stagings/list";
import { loadStaging } from "#prisma/stagings/load";
import { loadRevision } from "#prisma/stagings/revision";
import { cutsRevision, loadFoundCuts } from "#prisma/stock/cuttingProofs";
import { isSlugOf } from "./address";
import { type Alternative, alternativesOf } from "./alternatives";
import { keepFew } from "./keepFew";
import { prepareProduction } from "./prepareProduction";
import { todayIn } from "./today";

/** A production as the pages show it. */
export interface ProductionView {
  readonly productionId: string;
  readonly workroomId: string;
  /** Revision of the data everything here was computed from. */
  readonly inputRevision: number;
  readonly today: PlainDate;
  readonly prepared: Prepared;
  /** Titles of the productions that share the workroom and have a plan: what they take is gone from everybody's time here. */
  readonly sharedWith: readonly string[];
  /** Null until the production has been levelled for the first time. */
  readonly plan: StagingPlan | null;
  readonly planId: string | null;
  /** Every way to buy each material that is short, by its code; none without a plan. */
  readonly alternatives: () => ReadonlyMap<string, readonly Alternative[]>;
  /** When the plan was made; null without one. */
  readonly levelledAt: Date | null;
  /** The data have changed since the plan was levelled. */
  readonly stale: boolean;
}

const KEPT = 8;
const keep = keepFew<ProductionView | null>(KEPT);

/**
 * The production an address stands for, with everything computed from it; null when the company has none such. Computed once for each
 * revision of the data, plan and day, and kept in this process.
 */
export const loadProduction = cache(async (company: AuthorizedCompany, part: string): Promise<ProductionView | null> => {
  const code = (await listProductions(company)).find((production) => isSlugOf(part, production.code))?.code;
  const revision = code === undefined ? null : await loadRevision(company, code);
  if (code === undefined || !revision) return null;
  const today = todayIn(revision.zone);
  const cuts = await cutsRevision(company);
  return keep(JSON.stringify([company, code, revision, today, cuts]), () => compute(company, code, today));
});

const compute = async (company: AuthorizedCompany, code: string, today: PlainDate): Promise<ProductionView | null> => {
  const [loaded, kept, cuts] = await Promise.all([loadStaging(company, code), loadCurrentPlan(company, code), loadFoundCuts(company)]);
  if (!loaded) return null;
  const { prepared, sharedWith } = await prepareProduction(company, loaded, today);
  const assembled = kept && assemble(prepared, restorePlan(prepared, kept.plan));
  const plan = assembled && (cuts.isEmpty ? assembled : withFoundCuts(assembled, cuts.found));
  const { productionId, workroomId, inputRevision } = loaded;
  return {
    productionId,
    workroomId,
    inputRevision,
    today,
    prepared,
    sharedWith,
    plan,
    planId: kept?.planId ?? null,
    alternatives: plan ? alternativesOf(plan, cuts.found) : () => new Map(),
    levelledAt: kept?.createdAt ?? null,
    stale: kept !== null && kept.plan.inputRevision !== inputRevision,
  };
};
