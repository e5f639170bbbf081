import type { RowChange } from "#lib/editing/edit";
import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";

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

export interface EditsAsked {
  readonly most: number;
  /** Only those older than this one, for the next page. */
  readonly before?: string;
}

/** What was changed in a production, the newest first. */
export async function listEdits(
  company: AuthorizedCompany,
  productionCode: string,
  { most, before }: EditsAsked,
): Promise<readonly ListedEdit[]> {
  const rows = await database().edit.findMany({
    where: { companyId: company, production: { code: productionCode }, ...(before === undefined ? {} : { id: { lt: before } }) },
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
}
