import type { RowChange } from "#lib/editing/edit";
import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";
import type { Prisma } from "../generated/client";

export interface ListedEdit {
  readonly id: string;
  readonly at: Date;
  /** Null for the command line. */
  readonly who: string | null;
  readonly kind: "do" | "undo" | "redo";
  readonly title: string;
  readonly changes: readonly RowChange[];
  /** It has been taken back, or done again. */
  readonly takenBack: boolean;
}

/** What was changed in a production, the newest first. */
export const listEdits = async (company: AuthorizedCompany, productionCode: string, most: number): Promise<readonly ListedEdit[]> =>
  find({ companyId: company, production: { code: productionCode } }, most);

/** Edits of the company by their ids; those that are not there are left out. */
export const editsById = async (company: AuthorizedCompany, ids: readonly string[]): Promise<ReadonlyMap<string, ListedEdit>> =>
  new Map(ids.length === 0 ? [] : (await find({ companyId: company, id: { in: [...ids] } }, ids.length)).map((edit) => [edit.id, edit]));

const find = async (where: Prisma.EditWhereInput, most: number): Promise<readonly ListedEdit[]> => {
  const rows = await database().edit.findMany({
    where,
    include: { by: { select: { user: { select: { name: true } } } }, takenBack: { select: { id: true } } },
    orderBy: { id: "desc" },
    take: most,
  });
  return rows.map((row) => ({
    id: row.id,
    at: row.at,
    who: row.by?.user.name ?? null,
    kind: row.kind as ListedEdit["kind"],
    title: row.title,
    changes: row.changes as unknown as readonly RowChange[],
    takenBack: row.takenBack !== null,
  }));
};
