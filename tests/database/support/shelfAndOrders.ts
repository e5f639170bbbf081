import { database } from "#prisma/client";

/** A row in every table of the shelf and of buying. */
export async function shelfAndOrders(of: {
  readonly companyId: string;
  readonly productionId: string;
  readonly byId: string;
}): Promise<void> {
  const db = database();
  const { companyId, productionId, byId } = of;
  const by = { companyId, byId };
  const day = new Date("2027-02-01T00:00:00Z");
  const { id: lotId, materialId } = await db.lot.findFirstOrThrow({ where: { companyId } });
  await db.lot.updateMany({ where: { companyId, id: { not: lotId } }, data: { parentId: lotId } });
  const { id: setId } = await db.garmentSet.findFirstOrThrow({ where: { companyId } });
  const { id: reservationId } = await db.reservation.create({ data: { ...of, lotId, setId, quantity: 40, state: "held" } });
  await db.movement.create({ data: { ...of, lotId, reservationId, kind: "cut", quantity: -80, left: 10, reason: "cut" } });
  const order = await db.purchaseOrder.create({
    data: {
      ...{ companyId, productionId, number: 1, supplier: "Ghyll & Daughter", currency: "GBP", draftedById: byId, approvedById: byId },
      ...{ draftedOn: day, approvedOn: day, placedOn: day },
    },
  });
  const { id: lineId } = await db.orderLine.create({
    data: {
      ...{ companyId, orderId: order.id, materialId, lotId, line: 1, name: "Net", colour: "ash", pack: 80, packs: 3, pricePerPack: 900 },
      ...{ inspectionDays: 2, received: 80, returned: 40 },
    },
  });
  await db.receipt.create({ data: { ...by, lineId, lotId, day, quantity: 80 } });
  await db.supplierReturn.create({ data: { ...by, lineId, lotId, day, quantity: 40, credit: 450, why: "A hole." } });
  const before = { packsBefore: 2, pricePerPackBefore: 900 };
  await db.orderCorrection.create({ data: { ...by, ...before, lineId, day, packsAfter: 3, pricePerPackAfter: 900, why: "One more." } });
  await db.budgetShare.create({ data: { companyId, productionId, category: "net", amount: 10_000 } });
  const swatch = { swatch: Buffer.from([1, 2, 3]), swatchType: "image/png" };
  await db.dyeEntry.create({ data: { ...of, ...swatch, materialId, lotId, colour: "ash", recipe: "2 g", dyedOn: day } });
  await db.cuttingProof.create({ data: { companyId, job: "0".repeat(64), count: 2, bound: 1, patterns: [], ended: true } });
}
