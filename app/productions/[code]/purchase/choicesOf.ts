import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { Choice } from "#lib/purchasing/choice";
import { supplyOf } from "#lib/purchasing/supply";

const known = new WeakMap<StagingPlan, ReadonlyMap<string, readonly Choice[]>>();

/** Every way to buy each material that is short, the cheapest first; worked out once for a plan. */
export const choicesOf = (plan: StagingPlan): ReadonlyMap<string, readonly Choice[]> => {
  const before = known.get(plan);
  if (before) return before;
  const { supplies } = supplyOf(plan.staging, plan.works);
  const choices = new Map(supplies.map((supply) => [supply.material.code, supply.choices]));
  known.set(plan, choices);
  return choices;
};
