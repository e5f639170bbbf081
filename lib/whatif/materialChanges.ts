import type { Need } from "#lib/breakdown/work";
import type { Measure, Quantity } from "#lib/materials/material";

/** What is needed of one material before and after, net, as the garments ask for it: before waste, spare and packs. */
export interface MaterialChange {
  readonly material: string;
  readonly measure: Measure;
  readonly before: Quantity;
  readonly after: Quantity;
}

/** Every material needed before or after, by code: those that stay the same are among them. */
export const materialChanges = (before: readonly Need[], after: readonly Need[]): readonly MaterialChange[] => {
  const changes = new Map<string, { material: string; measure: Measure; before: Quantity; after: Quantity }>();
  const add = (side: "before" | "after", { material, measure, quantity }: Need) => {
    const change = changes.get(material) ?? { material, measure, before: 0, after: 0 };
    change[side] += quantity;
    changes.set(material, change);
  };
  for (const need of before) add("before", need);
  for (const need of after) add("after", need);
  return [...changes.values()].sort((a, b) => (a.material < b.material ? -1 : 1));
};
