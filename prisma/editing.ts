import { failed, ok, type Result } from "#lib/result";
import { writeAuditIn } from "./audit";
import type { AuthorizedCompany } from "./authorized";
import { database, type Transaction } from "./client";
import type { Prisma } from "./generated/client";

/** Tables whose rows people edit one by one, and whether a plan is computed from them. */
const EDITABLE = {
  Milestone: true,
  SizeGroup: true,
  Performer: true,
  Role: true,
  Scene: true,
  Costume: true,
  GarmentSet: true,
  Piece: true,
  Garment: true,
  Maker: true,
  Machine: true,
  Material: true,
  Offer: true,
  Lot: true,
  Task: true,
  Visit: false,
  WorkedMinutes: false,
  Note: false,
} as const;
export type EditableTable = keyof typeof EDITABLE;

export interface Edit<T extends EditableTable> {
  readonly table: T;
  readonly id: string;
  /** Version the row had when it was read. */
  readonly version: number;
  readonly changes: Prisma.TypeMap["model"][T]["operations"]["updateMany"]["args"]["data"];
  /** The production it belongs to; null for a row of the company's registers. */
  readonly productionId: string | null;
  /** What the audit says. */
  readonly detail: string;
}

/** Somebody else was faster. Show theirs beside what was typed. */
export interface Conflict {
  /** Version the row has now; null when it is gone. */
  readonly version: number | null;
  /** Null for the command line, or when nothing is known. */
  readonly changedBy: string | null;
  readonly changedAt: Date | null;
}

/** Changes a row if nobody else has since it was read, writes it down, and makes older plans stale. Returns the row's new version. */
export function editRow<T extends EditableTable>(
  company: AuthorizedCompany,
  user: string | null,
  edit: Edit<T>,
): Promise<Result<{ readonly version: number }, Conflict>> {
  const companyId: string = company;
  return database().$transaction(async (tx) => {
    const table = tableOf(tx, edit.table);
    const { count } = await table.updateMany({
      where: { companyId, id: edit.id, version: edit.version },
      data: { ...edit.changes, version: { increment: 1 } },
    });
    if (count === 0) return failed(await conflict(tx, companyId, edit));
    await writeAuditIn(tx, companyId, {
      user,
      ...(edit.productionId === null ? {} : { production: edit.productionId }),
      action: "edited",
      subject: { table: edit.table, id: edit.id },
      detail: edit.detail,
      after: JSON.parse(JSON.stringify(edit.changes)),
    });
    if (EDITABLE[edit.table]) {
      const production = edit.productionId === null ? {} : { id: edit.productionId };
      await tx.production.updateMany({ where: { companyId, ...production }, data: { inputRevision: { increment: 1 } } });
    }
    return ok({ version: edit.version + 1 });
  });
}

interface VersionedTable {
  updateMany(change: { where: object; data: object }): Promise<{ count: number }>;
  findUnique(query: { where: object; select: object }): Promise<{ version: number } | null>;
}

const tableOf = (tx: Transaction, table: EditableTable): VersionedTable =>
  tx[`${table[0].toLowerCase()}${table.slice(1)}` as Uncapitalize<EditableTable>] as unknown as VersionedTable;

async function conflict(tx: Transaction, companyId: string, { table, id }: Edit<EditableTable>): Promise<Conflict> {
  const row = await tableOf(tx, table).findUnique({ where: { companyId_id: { companyId, id } }, select: { version: true } });
  const last = await tx.auditEntry.findFirst({
    where: { companyId, subject: table, subjectId: id },
    include: { by: { include: { user: { select: { name: true } } } } },
    orderBy: [{ at: "desc" }, { id: "desc" }],
  });
  return { version: row?.version ?? null, changedBy: last?.by?.user.name ?? null, changedAt: last?.at ?? null };
}
