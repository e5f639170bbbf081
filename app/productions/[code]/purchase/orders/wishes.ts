import type { PurchaseLine } from "#lib/purchasing/purchase";
import type { DraftWish, LineWish } from "#prisma/orders/draft";
import type { ProductionView } from "../../../../_data/stagingPlan";

/**
 * What is drafted for a supplier from the purchase list as it is now: of each line the first of its orders, a line for each price. Null when one
 * of the materials is not bought from them any more.
 */
export const wishOf = (
  view: ProductionView,
  supplier: string,
  materials: readonly string[],
): Pick<DraftWish, "supplier" | "lines" | "freight"> | null => {
  const lines = (view.plan?.purchase.lines ?? []).filter((line) => line.supplier === supplier && materials.includes(line.material));
  if (lines.length !== new Set(materials).size) return null;
  const offers = view.prepared.staging.offers.filter((offer) => offer.supplier === supplier && materials.includes(offer.material));
  const freight = Math.max(0, ...offers.map(({ orderCost }) => orderCost));
  return { supplier, freight, lines: lines.flatMap((line) => lineWishes(view, line)) };
};

const lineWishes = ({ prepared: { staging } }: ProductionView, line: PurchaseLine): readonly LineWish[] => {
  const { material, name, colour, pack, oneLotSet, arithmetic } = line;
  const offer = staging.offers.find((each) => each.material === material && each.supplier === line.supplier && each.pack === pack);
  const garments = [...new Set(line.reasons.map(({ garment }) => garment))];
  const inspectionDays = offer?.inspectionDays ?? 0;
  const [first] = line.deliveries;
  return (first?.parts ?? []).map(({ packs, price: pricePerPack }) => ({
    ...{ material, name, colour, pack, packs, pricePerPack, oneLotSet, arithmetic, garments, inspectionDays },
    neededBy: first?.neededBy ?? null,
  }));
};
