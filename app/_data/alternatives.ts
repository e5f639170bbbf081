import type { FoundCuts } from "#lib/cutting/question";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { Choice } from "#lib/purchasing/choice";
import { supplyOf } from "#lib/purchasing/supply";

/** One way to buy a material: an offer, and so many packs of it. */
export type Alternative = Pick<Choice, "offer" | "order">;

/** Every way to buy each material that is short, the one taken first; worked out when it is first asked for. */
export const alternativesOf = (plan: StagingPlan, found: FoundCuts): (() => ReadonlyMap<string, readonly Alternative[]>) => {
  let known: ReadonlyMap<string, readonly Alternative[]> | null = null;
  return () => {
    known ??= new Map(
      supplyOf(plan.staging, plan.works, found).supplies.map(({ material, choices }) => [
        material.code,
        choices.map(({ offer, order }) => ({ offer, order })),
      ]),
    );
    return known;
  };
};
