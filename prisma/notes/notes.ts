import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";
import { type Hand, inProduction } from "../inProduction";

/** What somebody wrote down about a garment. */
export interface KeptNote {
  readonly id: string;
  readonly text: string;
  readonly at: Date;
  /** Who wrote it. */
  readonly user: string | null;
  readonly who: string | null;
  /** Counts changes: a change names the version it was read at. */
  readonly version: number;
}

/** Notes on a garment of a production, the newest first. */
export async function listNotes(company: AuthorizedCompany, production: string, garment: string): Promise<readonly KeptNote[]> {
  const rows = await database().note.findMany({
    where: { companyId: company, production: { code: production }, garmentNumber: garment },
    include: { by: { include: { user: { select: { name: true } } } } },
    orderBy: [{ createdAt: "desc" }, { id: "desc" }],
  });
  return rows.map(({ id, text, createdAt, byId, by, version }) => ({
    id,
    text,
    at: createdAt,
    user: byId,
    who: by?.user.name ?? null,
    version,
  }));
}

export const addNote = (hand: Hand, garment: string, text: string): Promise<void> =>
  inProduction(hand, async (tx, of) => {
    const { id } = await tx.note.create({ data: { ...of, garmentNumber: garment, text } });
    return { value: undefined, did: { action: "note added", detail: `${garment}: ${text}`, subject: { table: "Note", id } } };
  });

/** Changes a note of one's own; an empty text takes it away. False when it is not theirs, is gone, or was changed since it was read. */
export const changeNote = (hand: Hand, { id, version }: Pick<KeptNote, "id" | "version">, text: string): Promise<boolean> =>
  inProduction(hand, async (tx, of) => {
    const where = { ...of, id, version };
    const row = await tx.note.findFirst({ where });
    const { count } =
      text === "" ? await tx.note.deleteMany({ where }) : await tx.note.updateMany({ where, data: { text, version: { increment: 1 } } });
    if (!row || count === 0) return { value: false, did: null };
    const action = text === "" ? "note taken away" : "note changed";
    const detail = `${row.garmentNumber}: ${row.text}${text === "" ? "" : `, now: ${text}`}`;
    return { value: true, did: { action, detail, subject: { table: "Note", id: row.id } } };
  });
