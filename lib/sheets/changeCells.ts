import { shownParts, showQuantity } from "#lib/materials/showQuantity";
import type { Staging } from "#lib/staging/staging";
import type { MaterialChange } from "#lib/whatif/materialChanges";

/** `net-54, Net, 12 yd, 10 yd, -2 yd`: a material's net need before and after. */
export const materialCells = ({ material, measure, before, after }: MaterialChange, staging: Staging): readonly string[] => {
  const shown = (quantity: number) => showQuantity(quantity, measure, staging.production.lengths);
  const name = staging.materials.find(({ code }) => code === material)?.name ?? material;
  const change =
    shownParts(after - before, measure, staging.production.lengths) === 0
      ? "under 0.01"
      : `${after > before ? "+" : ""}${shown(after - before)}`;
  return [material, name, shown(before), shown(after), change];
};
