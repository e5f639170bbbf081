import { WITHHELD, withoutBody } from "#lib/breakdown/withoutBody";
import type { GarmentWork } from "#lib/breakdown/work";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { LineReason, PurchaseList } from "#lib/purchasing/purchase";
import type { Staging } from "#lib/staging/staging";
import type { ProductionView } from "./stagingPlan";

/**
 * The production as a member sees it who may not see measurements: the one place where they are taken out, for pages and files alike.
 * Quantities that are bought stay, since there is no buying without them.
 */
export const withoutMeasurements = (view: ProductionView): ProductionView => {
  const staging: Staging = { ...view.prepared.staging, measurements: [] };
  const works = view.prepared.works.map((work) => withoutBody(work, constructionOf(work, staging)));
  const notes = view.prepared.notes.filter(({ kind }) => kind !== "measurement");
  return { ...view, prepared: { ...view.prepared, staging, works, notes }, plan: view.plan && planWithout(view.plan, staging, works) };
};

const constructionOf = ({ construction: made }: GarmentWork, { constructions }: Staging) =>
  constructions.find(({ code, version }) => code === made?.code && version === made.version) ?? null;

const planWithout = (plan: StagingPlan, staging: Staging, works: readonly GarmentWork[]): StagingPlan => ({
  ...plan,
  staging,
  works,
  purchase: purchaseWithout(plan.purchase, works),
  // Every piece of a cutting plan is as long as somebody's body.
  cutting: [],
  notes: plan.notes.filter(({ kind }) => kind !== "measurement"),
});

const purchaseWithout = (purchase: PurchaseList, works: readonly GarmentWork[]): PurchaseList => {
  const key = ({ garment, role }: Pick<LineReason, "garment" | "role">) => JSON.stringify([garment, role]);
  const withheld = new Set(works.flatMap(({ needs }) => needs.filter(({ arithmetic }) => arithmetic === WITHHELD).map(key)));
  const reasonsWithout = <Of extends { readonly reasons: readonly LineReason[] }>(of: Of): Of => ({
    ...of,
    reasons: of.reasons.map((reason) => (withheld.has(key(reason)) ? { ...reason, arithmetic: "" } : reason)),
  });
  return {
    ...purchase,
    lines: purchase.lines.map(reasonsWithout),
    unoffered: purchase.unoffered.map(reasonsWithout),
    covered: purchase.covered.map(reasonsWithout),
  };
};
