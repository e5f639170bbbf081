import type { Staging } from "#lib/staging/staging";
import { insertRows, upsertRows } from "../bulk";
import { type Ids, need, needOrNull } from "../ids";
import type { CastingIds } from "./saveCasting";
import { saveOtherWork } from "./saveOtherWork";
import { idsByCode, type Saving } from "./saving";

export interface WardrobeNeeds extends CastingIds {
  readonly constructions: Ids;
  readonly materials: Ids;
}

/** Milestones, costumes with who wears them where, sets, stock, the piece list, and other work on it. */
export async function saveWardrobe(saving: Saving, staging: Staging, needs: WardrobeNeeds): Promise<void> {
  const { tx, companyId, productionId } = saving;
  const where = { companyId, productionId };
  const select = { id: true, code: true } as const;
  await upsertRows(
    tx,
    "Milestone",
    ["productionId", "code"],
    staging.milestones.map((milestone, position) => ({ ...where, ...milestone, position, version: 1 })),
  );
  await upsertRows(
    tx,
    "Costume",
    ["productionId", "code"],
    staging.costumes.map(({ role, ...costume }, position) => ({
      ...where,
      ...costume,
      roleId: need(needs.roles, role),
      position,
      version: 1,
    })),
  );
  await upsertRows(
    tx,
    "GarmentSet",
    ["productionId", "code"],
    staging.sets.map((set, position) => ({ ...where, ...set, position, version: 1 })),
  );
  const stock = await saveStock(saving, staging, needs.constructions);
  const own: OwnIds = {
    stock,
    milestones: idsByCode(await tx.milestone.findMany({ where, select })),
    costumes: idsByCode(await tx.costume.findMany({ where, select })),
    sets: idsByCode(await tx.garmentSet.findMany({ where, select })),
  };
  await savePieces(saving, staging, needs, own);
  await saveOtherWork(saving, staging, { ...own, materials: needs.materials });
  await dropWardrobe(saving, staging);
}

async function saveStock({ tx, companyId, sole }: Saving, staging: Staging, constructions: Ids): Promise<Ids> {
  await upsertRows(
    tx,
    "Garment",
    ["number"],
    staging.stock.map(({ construction, ...garment }, position) => ({
      companyId,
      ...garment,
      constructionId: needOrNull(constructions, construction),
      state: "in stock",
      position,
      version: 1,
    })),
  );
  const numbers = staging.stock.map((garment) => garment.number);
  const missing = { companyId, state: "in stock", number: { notIn: numbers } };
  if (sole) await tx.garment.updateMany({ where: missing, data: { state: "gone", version: { increment: 1 } } });
  const rows = await tx.garment.findMany({ where: { companyId }, select: { id: true, number: true } });
  return new Map(rows.map((row) => [row.number, row.id]));
}

interface OwnIds {
  readonly milestones: Ids;
  readonly costumes: Ids;
  readonly sets: Ids;
  readonly stock: Ids;
}

async function savePieces(saving: Saving, staging: Staging, needs: WardrobeNeeds, own: OwnIds): Promise<void> {
  const { tx, companyId, productionId } = saving;
  await upsertRows(
    tx,
    "Piece",
    ["productionId", "code"],
    staging.pieces.map((piece, position) => ({
      companyId,
      productionId,
      costumeId: need(own.costumes, piece.costume),
      constructionId: needOrNull(needs.constructions, piece.construction),
      keptVersion: piece.version,
      setId: needOrNull(own.sets, piece.set),
      dueId: need(own.milestones, piece.due),
      stockId: needOrNull(own.stock, piece.stock),
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
  const pieces = idsByCode(await tx.piece.findMany({ where: { companyId, productionId }, select: { id: true, code: true } }));
  await tx.pieceMaterial.deleteMany({ where: { companyId, piece: { productionId } } });
  await insertRows(
    tx,
    "PieceMaterial",
    staging.pieces.flatMap(({ code, materials }) =>
      Object.entries(materials).map(([role, material]) => ({
        companyId,
        pieceId: need(pieces, code),
        role,
        materialId: need(needs.materials, material),
      })),
    ),
  );
  await tx.appearance.deleteMany({ where: { companyId, scene: { productionId } } });
  await insertRows(
    tx,
    "Appearance",
    staging.appearances.map(({ role, scene, costume }, position) => ({
      companyId,
      roleId: need(needs.roles, role),
      sceneId: need(needs.scenes, scene),
      costumeId: need(own.costumes, costume),
      position,
    })),
  );
}

/** What the staging no longer has goes, in the order in which nothing points to it any more. */
async function dropWardrobe({ tx, companyId, productionId }: Saving, staging: Staging): Promise<void> {
  const not = (rows: readonly { readonly code: string }[]) => ({
    where: { companyId, productionId, code: { notIn: rows.map((row) => row.code) } },
  });
  await tx.piece.deleteMany(not(staging.pieces));
  await tx.garmentSet.deleteMany(not(staging.sets));
  await tx.costume.deleteMany(not(staging.costumes));
  await tx.milestone.deleteMany(not(staging.milestones));
}
