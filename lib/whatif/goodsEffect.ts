import { ascending } from "d3-array";
import type { GarmentWork } from "#lib/breakdown/work";
import type { Garment } from "#lib/casting/wardrobe";
import type { Measure, Quantity } from "#lib/materials/material";
import type { PurchaseLine } from "#lib/purchasing/purchase";
import { purchaseList } from "#lib/purchasing/purchaseList";
import type { Staging } from "#lib/staging/staging";
import type { MinorUnits } from "#lib/units/quantities";
import { type MaterialChange, materialChanges } from "./materialChanges";

/** A line of the purchase list that asks for more, or fewer, packs, or for others. */
export interface LineChange {
  readonly material: string;
  readonly name: string;
  readonly measure: Measure;
  /** Null where there is no such line. */
  readonly before: { readonly supplier: string; readonly packs: number; readonly pack: Quantity } | null;
  readonly after: { readonly supplier: string; readonly packs: number; readonly pack: Quantity } | null;
}

/** What a change does to cloth and buying, at once: no plan is made for it. */
export interface GoodsEffect {
  /** Net needs that change, by material. */
  readonly materials: readonly MaterialChange[];
  /** By material. */
  readonly lines: readonly LineChange[];
  /** Materials, carriage, bought and hired garments. */
  readonly cost: { readonly before: MinorUnits; readonly after: MinorUnits };
}

interface MadeOf {
  readonly staging: Staging;
  readonly garments: readonly Garment[];
  readonly works: readonly GarmentWork[];
}

export const goodsEffect = (before: MadeOf, after: MadeOf): GoodsEffect => {
  const list = ({ staging, garments, works }: MadeOf) => purchaseList(staging, works, () => null, { garments }).purchase;
  const was = list(before);
  const is = list(after);
  const needs = ({ works }: MadeOf) => works.flatMap((work) => work.needs);
  const lines = new Map<string, { before?: PurchaseLine; after?: PurchaseLine }>();
  for (const line of was.lines) lines.set(line.material, { before: line });
  for (const line of is.lines) lines.set(line.material, { ...lines.get(line.material), after: line });
  const asked = (line: PurchaseLine | undefined) => (line ? { supplier: line.supplier, packs: line.packs, pack: line.pack } : null);
  return {
    materials: materialChanges(needs(before), needs(after)).filter((change) => change.before !== change.after),
    lines: [...lines]
      .map(([material, line]) => {
        const { name, measure } = (line.after ?? line.before)!;
        return { material, name, measure, before: asked(line.before), after: asked(line.after) };
      })
      .filter((line) => JSON.stringify(line.before) !== JSON.stringify(line.after))
      .sort((a, b) => ascending(a.material, b.material)),
    cost: { before: was.total, after: is.total },
  };
};
