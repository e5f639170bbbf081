import type { Staging } from "#lib/staging/staging";
import type { Transaction } from "../client";
import type { Ids } from "../ids";

/** What every part of a save works with. */
export interface Saving {
  readonly tx: Transaction;
  readonly companyId: string;
  readonly workroomId: string;
  readonly productionId: string;
  /**
   * The staging is the whole truth about the company's registers too, and what it does not list is retired: so when the company has no
   * other production, and when it was loaded from the registers. Beside another production an import only adds to them, since the other
   * may need what it does not name.
   */
  readonly whole: boolean;
  /** What is there: rows that stay as they are need not be written. Null when it is not known. */
  readonly before: Staging | null;
  /** Ids asked for so far. */
  readonly known: Map<string, Promise<Ids>>;
}

/** Takes out of use the rows of a register that the staging does not list. */
export async function retireMissing(
  { tx, companyId, workroomId, whole }: Saving,
  register: "sizeGroup" | "performer" | "maker" | "machine" | "material" | "lot",
  rows: readonly { readonly code: string }[],
): Promise<void> {
  if (!whole) return;
  const ofWorkroom = register === "maker" || register === "machine" ? { workroomId } : {};
  const where = { companyId, ...ofWorkroom, code: { notIn: rows.map(({ code }) => code) }, retiredAt: null };
  const retire = { where, data: { retiredAt: new Date(), version: { increment: 1 } } };
  // One signature for six tables alike.
  const table = tx[register] as unknown as { updateMany(change: typeof retire): Promise<unknown> };
  await table.updateMany(retire);
}

type Listed = { readonly [K in keyof Staging]: Staging[K] extends readonly (infer Row)[] ? Row : never };

/** The rows of a list that are not there yet as they are and where they are, each with its place. */
export const changedRows = <K extends keyof Omit<Staging, "production">>(
  { before }: Saving,
  staging: Staging,
  list: K,
): readonly { readonly row: Listed[K]; readonly position: number }[] => {
  const there = before?.[list] as readonly Listed[K][] | undefined;
  return (staging[list] as readonly Listed[K][]).flatMap((row, position) =>
    there !== undefined && JSON.stringify(row) === JSON.stringify(there[position]) ? [] : [{ row, position }],
  );
};

const SCOPES = {
  sizeGroup: "company",
  performer: "company",
  material: "company",
  construction: "company",
  maker: "workroom",
  role: "production",
  scene: "production",
  cast: "production",
  milestone: "production",
  costume: "production",
  garmentSet: "production",
  piece: "production",
  approval: "production",
} as const;

/** Ids by code of a table's rows, asked once: only after what is to be added to the table was. */
export function idsOf(saving: Saving, table: keyof typeof SCOPES): Promise<Ids> {
  const { tx, companyId, workroomId, productionId, known } = saving;
  const scope = { company: {}, workroom: { workroomId }, production: { productionId } }[SCOPES[table]];
  const query = { where: { companyId, ...scope }, select: { id: true, code: true } };
  const rows = tx[table] as unknown as { findMany(asked: typeof query): Promise<{ id: string; code: string }[]> };
  const ids = known.get(table) ?? rows.findMany(query).then(idsByCode);
  known.set(table, ids);
  return ids;
}

/** Ids by code, of rows that have both. */
export const idsByCode = (rows: readonly { readonly id: string; readonly code: string }[]): Ids =>
  new Map(rows.map((row) => [row.code, row.id]));
