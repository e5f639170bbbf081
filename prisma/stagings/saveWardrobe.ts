import type { Staging } from "#lib/staging/staging";
import { insertRows, upsertRows } from "../bulk";
import { type Ids, need, needOrNull } from "../ids";
import { changedRows, idsOf, type Saving } from "./saving";

export async function saveMilestones(saving: Saving, staging: Staging): Promise<void> {
  const { tx, companyId, productionId } = saving;
  const rows = changedRows(saving, staging, "milestones").map(({ row, position }) => ({
    companyId,
    productionId,
    ...row,
    position,
    version: 1,
  }));
  await upsertRows(tx, "Milestone", ["productionId", "code"], rows);
}

export async function saveCostumes(saving: Saving, staging: Staging): Promise<void> {
  const { tx, companyId, productionId } = saving;
  const roles = await idsOf(saving, "role");
  const rows = changedRows(saving, staging, "costumes").map(({ row: { role, ...costume }, position }) => ({
    companyId,
    productionId,
    ...costume,
    roleId: need(roles, role),
    position,
    version: 1,
  }));
  await upsertRows(tx, "Costume", ["productionId", "code"], rows);
}

export async function saveSets(saving: Saving, staging: Staging): Promise<void> {
  const { tx, companyId, productionId } = saving;
  const rows = changedRows(saving, staging, "sets").map(({ row, position }) => ({ companyId, productionId, ...row, position, version: 1 }));
  await upsertRows(tx, "GarmentSet", ["productionId", "code"], rows);
}

/** Garments the company has already. */
export async function saveStock(saving: Saving, staging: Staging): Promise<void> {
  const { tx, companyId, whole } = saving;
  const constructions = await idsOf(saving, "construction");
  await upsertRows(
    tx,
    "Garment",
    ["number"],
    changedRows(saving, staging, "stock").map(({ row: { construction, ...garment }, position }) => ({
      companyId,
      ...garment,
      constructionId: needOrNull(constructions, construction),
      state: "in stock",
      position,
      version: 1,
    })),
  );
  const missing = { companyId, state: "in stock", number: { notIn: staging.stock.map(({ number }) => number) } };
  if (whole) await tx.garment.updateMany({ where: missing, data: { state: "gone", version: { increment: 1 } } });
}

const stockIds = async ({ tx, companyId }: Saving): Promise<Ids> => {
  const rows = await tx.garment.findMany({ where: { companyId }, select: { id: true, number: true } });
  return new Map(rows.map((row) => [row.number, row.id]));
};

/** The piece list. */
export async function savePieces(saving: Saving, staging: Staging): Promise<void> {
  const { tx, companyId, productionId } = saving;
  const [costumes, constructions, sets, milestones, materials] = [
    await idsOf(saving, "costume"),
    await idsOf(saving, "construction"),
    await idsOf(saving, "garmentSet"),
    await idsOf(saving, "milestone"),
    await idsOf(saving, "material"),
  ];
  const stock = await stockIds(saving);
  await upsertRows(
    tx,
    "Piece",
    ["productionId", "code"],
    changedRows(saving, staging, "pieces").map(({ row: piece, position }) => ({
      companyId,
      productionId,
      costumeId: need(costumes, piece.costume),
      constructionId: needOrNull(constructions, piece.construction),
      keptVersion: piece.version,
      setId: needOrNull(sets, piece.set),
      dueId: need(milestones, piece.due),
      stockId: needOrNull(stock, piece.stock),
      code: piece.code,
      name: piece.name,
      source: piece.source,
      each: piece.each,
      parameters: piece.parameters,
      weight: piece.weight,
      price: piece.price,
      position,
      version: 1,
    })),
  );
  const pieces = await idsOf(saving, "piece");
  await tx.pieceMaterial.deleteMany({ where: { companyId, piece: { productionId } } });
  await insertRows(
    tx,
    "PieceMaterial",
    staging.pieces.flatMap((piece) =>
      Object.entries(piece.materials).map(([role, material]) => ({
        companyId,
        pieceId: need(pieces, piece.code),
        role,
        materialId: need(materials, material),
      })),
    ),
  );
}

/** What a role wears in which scene. */
export async function saveAppearances(saving: Saving, staging: Staging): Promise<void> {
  const { tx, companyId, productionId } = saving;
  const [roles, scenes, costumes] = [await idsOf(saving, "role"), await idsOf(saving, "scene"), await idsOf(saving, "costume")];
  await tx.appearance.deleteMany({ where: { companyId, scene: { productionId } } });
  await insertRows(
    tx,
    "Appearance",
    staging.appearances.map(({ role, scene, costume }, position) => ({
      companyId,
      roleId: need(roles, role),
      sceneId: need(scenes, scene),
      costumeId: need(costumes, costume),
      position,
    })),
  );
}
