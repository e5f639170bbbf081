import { type AuditNote, writeAuditIn } from "./audit";
import type { AuthorizedCompany } from "./authorized";
import { database, type Transaction } from "./client";

/** Somebody at work on a production of their company. */
export interface Hand {
  readonly company: AuthorizedCompany;
  readonly user: string;
  /** Code of the production. */
  readonly production: string;
}

/** What every row written there carries. */
export interface Of {
  readonly companyId: string;
  readonly productionId: string;
  readonly byId: string;
}

/**
 * Runs `write` in one transaction and writes down what it says was done; null says that nothing was, and nothing is written down.
 * Throws when the company has no such production: pages are reached only through one.
 */
export const inProduction = <T>(
  { company, user, production }: Hand,
  write: (tx: Transaction, of: Of) => Promise<{ readonly value: T; readonly did: Pick<AuditNote, "action" | "detail" | "subject"> | null }>,
): Promise<T> =>
  database().$transaction(async (tx) => {
    const { id } = await tx.production.findUniqueOrThrow({
      where: { companyId_code: { companyId: company, code: production } },
      select: { id: true },
    });
    const { value, did } = await write(tx, { companyId: company, productionId: id, byId: user });
    if (did) await writeAuditIn(tx, company, { user, production: id, ...did });
    return value;
  });
