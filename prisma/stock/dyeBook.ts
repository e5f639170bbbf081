import type { DyeEntry } from "#lib/dyeing/dyeBook";
import { writeAuditIn } from "../audit";
import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";
import { newId } from "../ids";
import { databaseDate, plainDate } from "../plainDates";

export type SwatchType = "image/png" | "image/jpeg" | "image/webp";

/** A page of the dye book as it is shown. */
export interface DyePage extends DyeEntry {
  readonly materialName: string;
  readonly production: string | null;
}

interface DyeWish extends Pick<DyeEntry, "material" | "lot" | "garments" | "colour" | "recipe" | "cautions" | "dyedOn"> {
  readonly production: string;
  readonly swatch: { readonly bytes: Uint8Array; readonly type: SwatchType } | null;
  readonly user: string | null;
}

/** The dye book of the company, the newest first: a recipe serves every production. */
export async function loadDyeBook(company: AuthorizedCompany): Promise<readonly DyePage[]> {
  const rows = await database().dyeEntry.findMany({
    where: { companyId: company },
    omit: { swatch: true },
    include: {
      material: { select: { code: true, name: true } },
      lot: { select: { code: true } },
      by: { select: { user: { select: { name: true } } } },
      production: { select: { code: true } },
    },
    orderBy: [{ dyedOn: "desc" }, { id: "desc" }],
  });
  return rows.map((row) => ({
    code: row.id,
    material: row.material.code,
    garments: row.garments,
    materialName: row.material.name,
    lot: row.lot?.code ?? null,
    colour: row.colour,
    recipe: row.recipe,
    cautions: row.cautions,
    dyedOn: plainDate(row.dyedOn),
    by: row.by?.user.name ?? null,
    production: row.production?.code ?? null,
    hasSwatch: row.swatchType !== null,
  }));
}

/** The photograph of a swatch; null when the company has none of that page. */
export async function loadSwatch(
  company: AuthorizedCompany,
  id: string,
): Promise<{ readonly bytes: Uint8Array; readonly type: string } | null> {
  const row = await database().dyeEntry.findUnique({
    where: { companyId_id: { companyId: company, id } },
    select: { swatch: true, swatchType: true },
  });
  return row?.swatch && row.swatchType ? { bytes: row.swatch, type: row.swatchType } : null;
}

/** Writes a page into the dye book. Says what is missing when the production, the material or the lot (of that material) is not there. */
export const writeDyePage = (company: AuthorizedCompany, wish: DyeWish): Promise<"production" | "material" | "lot" | null> =>
  database().$transaction(async (tx) => {
    const companyId: string = company;
    const { production, material, lot, user, swatch } = wish;
    const of = await tx.production.findUnique({ where: { companyId_code: { companyId, code: production } }, select: { id: true } });
    if (!of) return "production";
    const dyed = await tx.material.findUnique({
      where: { companyId_code: { companyId, code: material } },
      select: { id: true, name: true },
    });
    if (!dyed) return "material";
    const from =
      lot === null ? null : await tx.lot.findFirst({ where: { companyId, code: lot, materialId: dyed.id }, select: { id: true } });
    if (lot !== null && !from) return "lot";
    const id = newId();
    await tx.dyeEntry.create({
      data: {
        ...{ id, companyId, productionId: of.id, materialId: dyed.id, lotId: from?.id ?? null, byId: user },
        ...{
          garments: [...wish.garments],
          colour: wish.colour,
          recipe: wish.recipe,
          cautions: wish.cautions,
          dyedOn: databaseDate(wish.dyedOn),
        },
        ...(swatch ? { swatch: Buffer.from(swatch.bytes), swatchType: swatch.type } : {}),
      },
    });
    const detail = `Dye book: ${dyed.name}, ${wish.colour}`;
    await writeAuditIn(tx, companyId, { user, production: of.id, action: "dye book", subject: { table: "DyeEntry", id }, detail });
    return null;
  });
