import type { Staging } from "#lib/staging/staging";
import { insertRows, upsertRows } from "../bulk";
import { need, newId } from "../ids";
import { settleRegister } from "../stock/settleRegister";
import { changedRows, idsOf, retireMissing, type Saving } from "./saving";

export async function saveMaterials(saving: Saving, staging: Staging): Promise<void> {
  const { tx, companyId } = saving;
  await upsertRows(
    tx,
    "Material",
    ["code"],
    changedRows(saving, staging, "materials").map(({ row: material, position }) => ({
      companyId,
      ...material,
      position,
      retiredAt: null,
      version: 1,
    })),
  );
  await retireMissing(saving, "material", staging.materials);
}

/** What is on the shelf or on order. */
export async function saveLots(saving: Saving, staging: Staging): Promise<void> {
  const { tx, companyId } = saving;
  const materials = await idsOf(saving, "material");
  await upsertRows(
    tx,
    "Lot",
    ["code"],
    changedRows(saving, staging, "lots").map(({ row: { material, ...lot }, position }) => ({
      companyId,
      materialId: need(materials, material),
      ...lot,
      position,
      retiredAt: null,
      version: 1,
    })),
  );
  await retireMissing(saving, "lot", [...staging.lots, ...(await lotsOfTheShelf(saving))]);
  await settleRegister(tx, companyId);
}

/** Lots no file need name: those of orders, and off-cuts. They end when they are used up. */
const lotsOfTheShelf = ({ tx, companyId }: Saving) =>
  tx.lot.findMany({
    where: { companyId, OR: [{ parentId: { not: null } }, { receipts: { some: {} } }, { orderLines: { some: {} } }] },
    select: { code: true },
  });

/** The offers of a material that the staging offers replace those it had. */
export async function saveOffers(saving: Saving, staging: Staging): Promise<void> {
  const { tx, companyId, whole } = saving;
  const materials = await idsOf(saving, "material");
  const offers = staging.offers.map(({ material, prices, ...offer }, position) => ({
    id: newId(),
    companyId,
    materialId: need(materials, material),
    ...offer,
    position,
  }));
  const materialIds = offers.map((offer) => offer.materialId);
  await tx.offer.deleteMany({ where: { companyId, ...(whole ? {} : { materialId: { in: materialIds } }) } });
  await insertRows(tx, "Offer", offers);
  const prices = offers.flatMap(({ id: offerId }, at) =>
    staging.offers[at].prices.map(({ from, price }) => ({ companyId, offerId, fromPacks: from, price })),
  );
  await insertRows(tx, "OfferPrice", prices);
}
