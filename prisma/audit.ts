import type { AuthorizedCompany } from "./authorized";
import { database, type Transaction } from "./client";
import { Prisma } from "./generated/client";
import { newId } from "./ids";

/** What was done, to be written down. */
export interface AuditNote {
  /** A member of the company; null for the command line and the worker. */
  readonly user: string | null;
  readonly action: string;
  readonly detail: string;
  readonly production?: string;
  /** The row it is about. */
  readonly subject?: { readonly table: string; readonly id: string };
  readonly before?: Prisma.InputJsonValue;
  readonly after?: Prisma.InputJsonValue;
}

/** One line of the audit, as it is read. */
export interface AuditLine {
  readonly at: Date;
  /** Null for the command line and the worker. */
  readonly who: string | null;
  readonly action: string;
  readonly detail: string;
}

/** Writes it down in the transaction that does it, so that neither is there without the other. */
export async function writeAuditIn(tx: Transaction, companyId: string, note: AuditNote): Promise<void> {
  await tx.auditEntry.create({
    data: {
      id: newId(),
      companyId,
      byId: note.user,
      productionId: note.production ?? null,
      action: note.action,
      subject: note.subject?.table ?? "company",
      subjectId: note.subject?.id ?? null,
      summary: note.detail,
      before: note.before ?? Prisma.DbNull,
      after: note.after ?? Prisma.DbNull,
    },
  });
}

/** Writes down what is no change of rows, such as a sign-in or an export. */
export const writeAudit = (company: AuthorizedCompany, note: AuditNote): Promise<void> => writeAuditIn(database(), company, note);

/** The newest lines of a production's audit, newest first. */
export async function readAudit(company: AuthorizedCompany, productionId: string, most = 200): Promise<readonly AuditLine[]> {
  const rows = await database().auditEntry.findMany({
    where: { companyId: company, productionId },
    include: { by: { include: { user: { select: { name: true } } } } },
    orderBy: [{ at: "desc" }, { id: "desc" }],
    take: most,
  });
  return rows.map((row) => ({ at: row.at, who: row.by?.user.name ?? null, action: row.action, detail: row.summary }));
}
