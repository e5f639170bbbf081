import type { FoundCuts } from "#lib/cutting/question";
import { purchaseList } from "#lib/purchasing/purchaseList";
import { cutDays } from "./cutDays";
import type { StagingPlan } from "./stagingPlan";

/** The plan with what searches for better cutting have come to: fewer packs where they need fewer, and bounds as far as they are proved. */
export const withFoundCuts = (plan: StagingPlan, found: FoundCuts): StagingPlan => {
  const { staging, works, garments, tasks, summary } = plan;
  const { purchase, cutting } = purchaseList(staging, works, cutDays(tasks), { garments, found });
  return { ...plan, purchase, cutting, summary: { ...summary, materialCost: purchase.total } };
};
