import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";
import { type Hand, inProduction } from "../inProduction";

/** A photograph of a garment. Its two pictures lie under the data folder, named by its sum. */
export interface KeptPhoto {
  readonly id: string;
  readonly caption: string;
  readonly width: number;
  readonly height: number;
  /** SHA-256 of the picture kept. */
  readonly sha256: string;
  readonly at: Date;
  readonly user: string | null;
  readonly who: string | null;
}

export interface NewPhoto {
  readonly garment: string;
  readonly caption: string;
  /** What the file was called where it came from: said in the history only. */
  readonly name: string;
  readonly mediaType: string;
  readonly bytes: number;
  readonly width: number;
  readonly height: number;
  readonly sha256: string;
  /** Where it lies under the data folder. */
  readonly path: string;
}

const WHO = { by: { include: { user: { select: { name: true } } } } } as const;

/** Photographs of a garment of a production, the newest first. */
export async function listPhotos(company: AuthorizedCompany, production: string, garment: string): Promise<readonly KeptPhoto[]> {
  const rows = await database().file.findMany({
    where: { companyId: company, production: { code: production }, garmentNumber: garment, width: { not: null } },
    include: WHO,
    orderBy: [{ createdAt: "desc" }, { id: "desc" }],
  });
  return rows.map((row) => ({
    id: row.id,
    caption: row.caption,
    width: row.width ?? 0,
    height: row.height ?? 0,
    sha256: row.sha256,
    at: row.createdAt,
    user: row.byId,
    who: row.by?.user.name ?? null,
  }));
}

/** Where a photograph of the company's production lies; null when there is none such. */
export async function findPhoto(company: AuthorizedCompany, production: string, id: string): Promise<{ readonly path: string } | null> {
  return database().file.findFirst({
    where: { companyId: company, production: { code: production }, id, width: { not: null } },
    select: { path: true },
  });
}

export const addPhoto = (hand: Hand, { garment, ...photo }: NewPhoto): Promise<void> =>
  inProduction(hand, async (tx, of) => {
    const { id } = await tx.file.create({ data: { ...of, ...photo, garmentNumber: garment } });
    const detail = `${garment}: ${photo.caption || photo.name}`;
    return { value: undefined, did: { action: "photograph added", detail, subject: { table: "File", id } } };
  });

/** Takes a photograph away. Gives its path when no other row keeps the same picture, so that the file may go too; null otherwise. */
export const dropPhoto = (hand: Hand, id: string, ownOnly: boolean): Promise<{ readonly gone: boolean; readonly path: string | null }> =>
  inProduction<{ gone: boolean; path: string | null }>(hand, async (tx, { companyId, productionId, byId }) => {
    const row = await tx.file.findFirst({ where: { companyId, productionId, id, ...(ownOnly ? { byId } : {}) } });
    if (!row) return { value: { gone: false, path: null }, did: null };
    await tx.file.delete({ where: { id: row.id } });
    const same = await tx.file.count({ where: { companyId, path: row.path } });
    const detail = `${row.garmentNumber}: ${row.caption || row.name}`;
    const did = { action: "photograph taken away", detail, subject: { table: "File", id } };
    return { value: { gone: true, path: same === 0 ? row.path : null }, did };
  });
