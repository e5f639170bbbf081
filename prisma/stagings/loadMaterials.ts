import type { Lot, Material, Offer } from "#lib/materials/material";
import type { Transaction } from "../client";
import { plainDateOrNull } from "../plainDates";

interface Materials {
  readonly materials: readonly Material[];
  readonly offers: readonly Offer[];
  readonly lots: readonly Lot[];
}

/** The company's materials, what suppliers offer, and what is on the shelf. */
export async function loadMaterials(tx: Transaction, companyId: string): Promise<Materials> {
  const inUse = { where: { companyId, retiredAt: null }, orderBy: [{ position: "asc" as const }, { code: "asc" as const }] };
  const of = { material: { select: { code: true } } } as const;
  const materials = await tx.material.findMany(inUse);
  const lots = await tx.lot.findMany({ ...inUse, include: of });
  const offers = await tx.offer.findMany({
    where: { companyId, material: { retiredAt: null } },
    include: { ...of, offerPrices: { orderBy: { fromPacks: "asc" } } },
    orderBy: [{ position: "asc" }, { id: "asc" }],
  });
  return {
    materials: materials.map((material) => ({
      code: material.code,
      name: material.name,
      kind: material.kind as Material["kind"],
      measure: material.measure as Material["measure"],
      colour: material.colour,
      width: material.width,
      cuttable: material.cuttable,
      shrinkage: material.shrinkage,
      spare: material.spare,
      kerf: material.kerf,
      keep: material.keep,
      grain: material.grain as Material["grain"],
    })),
    offers: offers.map((offer) => ({
      material: offer.material.code,
      supplier: offer.supplier,
      pack: Number(offer.pack),
      minimumPacks: offer.minimumPacks,
      prices: offer.offerPrices.map(({ fromPacks, price }) => ({ from: fromPacks, price: Number(price) })),
      leadDays: offer.leadDays,
      inspectionDays: offer.inspectionDays,
      breaks: offer.breaks as Offer["breaks"],
      orderCost: Number(offer.orderCost),
    })),
    lots: lots.map((lot) => ({
      code: lot.code,
      material: lot.material.code,
      dyeLot: lot.dyeLot,
      quantity: Number(lot.quantity),
      location: lot.location,
      breadth: lot.breadth,
      arrives: plainDateOrNull(lot.arrives),
    })),
  };
}
