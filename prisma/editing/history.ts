import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";
import { editsById, type ListedEdit } from "./listEdits";

/** Something that was done in a production. */
export interface HistoryLine {
  readonly id: string;
  readonly at: Date;
  /** Null for the command line and the worker. */
  readonly who: string | null;
  readonly action: string;
  readonly detail: string;
  /** What it changed in the staging, when it was an edit. */
  readonly edit: ListedEdit | null;
}

export interface HistoryAsked {
  readonly most: number;
  /** Only what was done before this line, for the next page. */
  readonly before?: string;
}

/** Everything that was written down about a production, the newest first. */
export async function readHistory(
  company: AuthorizedCompany,
  productionCode: string,
  { most, before }: HistoryAsked,
): Promise<readonly HistoryLine[]> {
  const production = await database().production.findUnique({
    where: { companyId_code: { companyId: company, code: productionCode } },
    select: { id: true },
  });
  if (!production) return [];
  const rows = await database().auditEntry.findMany({
    where: { companyId: company, productionId: production.id, ...(before === undefined ? {} : { id: { lt: before } }) },
    include: { by: { include: { user: { select: { name: true } } } } },
    orderBy: { id: "desc" },
    take: most,
  });
  const edits = await editsById(
    company,
    rows.flatMap(({ subject, subjectId }) => (subject === "Edit" && subjectId !== null ? [subjectId] : [])),
  );
  return rows.map(({ id, at, by, action, summary, subjectId }) => ({
    id,
    at,
    who: by?.user.name ?? null,
    action,
    detail: summary,
    edit: edits.get(subjectId ?? "") ?? null,
  }));
}
