import type { GarmentWork } from "#lib/breakdown/work";
import type { Garment } from "#lib/casting/wardrobe";
import type { PurchaseList } from "#lib/purchasing/purchase";
import type { Staging } from "#lib/staging/staging";
import type { MinorUnits } from "#lib/units/quantities";
import { standardLabour } from "#lib/whatif/labourRate";

/** What one garment is reckoned to cost. */
export interface GarmentCost {
  /** Likely minutes and fittings at the mean cost of the makers who have each skill. */
  readonly labour: MinorUnits;
  /** Its part of each line of the purchase list, by what it needs of it; what the shelf gives costs nothing here. */
  readonly goods: MinorUnits;
  /** Of one that is hired or bought. */
  readonly price: MinorUnits;
  readonly total: MinorUnits;
}

export const garmentCost = (
  garment: Garment,
  work: GarmentWork | null,
  staging: Pick<Staging, "makers">,
  purchase: Pick<PurchaseList, "lines">,
): GarmentCost => {
  const labour = work ? standardLabour(staging.makers, [work]).cost : 0;
  const shares = purchase.lines.map(({ cost, gross, reasons }) => {
    const own = reasons.filter((reason) => reason.garment === garment.number).reduce((sum, { quantity }) => sum + quantity, 0);
    return gross === 0 ? 0 : (cost * own) / gross;
  });
  const goods = Math.round(shares.reduce((sum, share) => sum + share, 0));
  const price = garment.price ?? 0;
  return { labour, goods, price, total: labour + goods + price };
};
