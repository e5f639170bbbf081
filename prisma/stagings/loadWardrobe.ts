import type { Costume, GarmentSet, Piece } from "#lib/casting/wardrobe";
import type { Construction } from "#lib/constructions/construction";
import type { Milestone } from "#lib/staging/staging";
import type { StockGarment } from "#lib/stock/stock";
import type { Transaction } from "../client";
import { plainDate, plainDateOrNull } from "../plainDates";

interface Wardrobe {
  readonly milestones: readonly Milestone[];
  readonly costumes: readonly Costume[];
  readonly sets: readonly GarmentSet[];
  readonly pieces: readonly Piece[];
  readonly stock: readonly StockGarment[];
  readonly constructions: readonly Construction[];
}

const byPosition = { orderBy: [{ position: "asc" as const }, { id: "asc" as const }] };
const code = { select: { code: true } } as const;

/** What is made, how, and for when. */
export async function loadWardrobe(tx: Transaction, companyId: string, productionId: string): Promise<Wardrobe> {
  const where = { companyId, productionId };
  const milestones = await tx.milestone.findMany({ where, ...byPosition });
  const costumes = await tx.costume.findMany({ where, ...byPosition, include: { role: code } });
  const sets = await tx.garmentSet.findMany({ where, ...byPosition });
  const stock = await tx.garment.findMany({ where: { companyId, state: "in stock" }, ...byPosition, include: { construction: code } });
  const versions = await tx.productionConstruction.findMany({ where, ...byPosition, include: { version: { select: { data: true } } } });
  return {
    milestones: milestones.map((milestone) => ({
      code: milestone.code,
      kind: milestone.kind as Milestone["kind"],
      name: milestone.name,
      date: plainDate(milestone.date),
      at: milestone.at,
    })),
    costumes: costumes.map((costume) => ({ code: costume.code, name: costume.name, role: costume.role.code })),
    sets: sets.map((set) => ({
      code: set.code,
      name: set.name,
      oneDyeLot: set.oneDyeLot,
      repair: set.repair,
      prototype: set.prototype,
      freeUntil: set.freeUntil,
      approvalDays: set.approvalDays,
      approvedOn: plainDateOrNull(set.approvedOn),
    })),
    pieces: await loadPieces(tx, companyId, productionId),
    stock: stock.map((garment) => ({
      number: garment.number,
      name: garment.name,
      construction: garment.construction?.code ?? null,
      location: garment.location,
      condition: garment.condition as StockGarment["condition"],
      note: garment.note,
    })),
    constructions: versions.map((row) => row.version.data as unknown as Construction),
  };
}

async function loadPieces(tx: Transaction, companyId: string, productionId: string): Promise<Piece[]> {
  const pieces = await tx.piece.findMany({
    where: { companyId, productionId },
    ...byPosition,
    include: {
      costume: code,
      construction: code,
      set: code,
      due: code,
      stock: { select: { number: true } },
      pieceMaterials: { include: { material: code }, orderBy: { role: "asc" } },
    },
  });
  return pieces.map((piece) => ({
    code: piece.code,
    costume: piece.costume.code,
    name: piece.name,
    source: piece.source as Piece["source"],
    construction: piece.construction?.code ?? null,
    version: piece.keptVersion,
    set: piece.set?.code ?? null,
    each: piece.each as Piece["each"],
    parameters: piece.parameters as Record<string, string>,
    materials: Object.fromEntries(piece.pieceMaterials.map(({ role, material }) => [role, material.code])),
    due: piece.due.code,
    weight: piece.weight,
    price: piece.price === null ? null : Number(piece.price),
    stock: piece.stock?.number ?? null,
  }));
}
