import type { Staging } from "#lib/staging/staging";
import { insertRows, upsertRows } from "../bulk";
import { type Ids, need, newId } from "../ids";
import { idsByCode, retireMissing, type Saving } from "./saving";

/** Materials, what suppliers offer, and what is on the shelf. */
export async function saveMaterials(saving: Saving, staging: Staging): Promise<Ids> {
  const { tx, companyId } = saving;
  await upsertRows(
    tx,
    "Material",
    ["code"],
    staging.materials.map((material, position) => ({ companyId, ...material, position, retiredAt: null, version: 1 })),
  );
  const materials = idsByCode(await tx.material.findMany({ where: { companyId }, select: { id: true, code: true } }));
  await upsertRows(
    tx,
    "Lot",
    ["code"],
    staging.lots.map(({ material, ...lot }, position) => ({
      companyId,
      materialId: need(materials, material),
      ...lot,
      position,
      retiredAt: null,
      version: 1,
    })),
  );
  await retireMissing(
    saving,
    "material",
    staging.materials.map((material) => material.code),
  );
  await retireMissing(
    saving,
    "lot",
    staging.lots.map((lot) => lot.code),
  );
  await saveOffers(saving, staging, materials);
  return materials;
}

/** The offers of a material that the staging offers replace those it had. */
async function saveOffers({ tx, companyId, sole }: Saving, staging: Staging, materials: Ids): Promise<void> {
  const offers = staging.offers.map(({ material, prices, ...offer }, position) => ({
    id: newId(),
    companyId,
    materialId: need(materials, material),
    ...offer,
    position,
  }));
  const materialIds = offers.map((offer) => offer.materialId);
  await tx.offer.deleteMany({ where: { companyId, ...(sole ? {} : { materialId: { in: materialIds } }) } });
  await insertRows(tx, "Offer", offers);
  const prices = offers.flatMap(({ id: offerId }, at) =>
    staging.offers[at].prices.map(({ from, price }) => ({ companyId, offerId, fromPacks: from, price })),
  );
  await insertRows(tx, "OfferPrice", prices);
}
