import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { MinorUnits } from "#lib/units/quantities";

/** One kind of cost before and after. */
export interface MoneyChange {
  readonly kind: "labour" | "material" | "price";
  /** Material, or piece with a price; empty for labour. */
  readonly about: string;
  readonly before: MinorUnits;
  readonly after: MinorUnits;
}

/** Labour, each material bought, and each piece that has a price. They add up to the labour and material cost of the plans. */
export const moneyChanges = (before: StagingPlan, after: StagingPlan): readonly MoneyChange[] => {
  const old = costsOf(before);
  const now = costsOf(after);
  const names = [...new Set([...now.keys(), ...old.keys()])];
  return names.map((name) => {
    const [kind, about] = JSON.parse(name) as [MoneyChange["kind"], string];
    return { kind, about, before: old.get(name) ?? 0, after: now.get(name) ?? 0 };
  });
};

const costsOf = ({ summary, purchase, garments }: StagingPlan): ReadonlyMap<string, MinorUnits> => {
  const costs = new Map<string, MinorUnits>();
  const add = (kind: MoneyChange["kind"], about: string, cost: MinorUnits) => {
    const name = JSON.stringify([kind, about]);
    costs.set(name, (costs.get(name) ?? 0) + cost);
  };
  add("labour", "", summary.labourCost);
  for (const { material, cost } of purchase.lines) add("material", material, cost);
  for (const { piece, price } of garments) if (price !== null) add("price", piece, price);
  return costs;
};
