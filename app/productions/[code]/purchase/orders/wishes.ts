import type { PurchaseLine } from "#lib/purchasing/purchase";
import type { DraftWish, LineWish } from "#prisma/orders/draft";
import type { ProductionView } from "../../../../_data/stagingPlan";

/** What is drafted for a supplier from the purchase list as it is now; null when one of the materials is not bought from them any more. */
export const wishOf = (
  view: ProductionView,
  supplier: string,
  materials: readonly string[],
): Pick<DraftWish, "supplier" | "lines" | "freight"> | null => {
  const lines = (view.plan?.purchase.lines ?? []).filter((line) => line.supplier === supplier && materials.includes(line.material));
  if (lines.length !== new Set(materials).size) return null;
  return { supplier, freight: 0, lines: lines.map((line) => lineWish(view, line)) };
};

const lineWish = ({ prepared: { staging } }: ProductionView, line: PurchaseLine): LineWish => {
  const { material, name, colour, pack, packs, pricePerPack, oneLotSet, neededBy, arithmetic } = line;
  const offer = staging.offers.find((each) => each.material === material && each.supplier === line.supplier && each.pack === pack);
  const garments = [...new Set(line.reasons.map(({ garment }) => garment))];
  return {
    material,
    name,
    colour,
    pack,
    packs,
    pricePerPack,
    oneLotSet,
    neededBy,
    arithmetic,
    garments,
    inspectionDays: offer?.inspectionDays ?? 0,
  };
};
