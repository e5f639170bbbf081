import type { Fault } from "#lib/exchange/fault";
import { failed, ok, type Result } from "#lib/result";
import type { Production, Staging } from "#lib/staging/staging";
import { writeAuditIn } from "../audit";
import type { AuthorizedCompany } from "../authorized";
import { database, type Transaction } from "../client";
import { databaseDate } from "../plainDates";
import { changedVersions } from "./saveConstructions";
import { saveParts } from "./saveParts";

export interface SavedStaging {
  readonly productionId: string;
  readonly workroomId: string;
  readonly inputRevision: number;
  /** False when a production with the code was there and now is as the staging says. */
  readonly created: boolean;
}

/**
 * Keeps a staging that was checked: inserts the production, or makes the one with its code equal to it, in one transaction.
 * Rows with the same code keep their ids. Fails, having written nothing, when a kept version of a construction would change.
 *
 * @param user who did it, a member of the company; null for the command line.
 */
export function saveStaging(
  company: AuthorizedCompany,
  user: string | null,
  staging: Staging,
): Promise<Result<SavedStaging, readonly Fault[]>> {
  return database().$transaction((tx) => saveStagingIn(tx, company, user, staging), { timeout: 60_000, maxWait: 10_000 });
}

/** The same inside a transaction that does more. */
export async function saveStagingIn(
  tx: Transaction,
  company: AuthorizedCompany,
  user: string | null,
  staging: Staging,
): Promise<Result<SavedStaging, readonly Fault[]>> {
  // One save at a time in a company: what is missing is judged against what is there.
  await tx.$queryRaw`select id from company where id = ${company}::uuid for update`;
  const faults = await changedVersions(tx, company, staging.constructions);
  if (faults.length > 0) return failed(faults);
  const { production, created } = await saveProduction(tx, company, staging.production);
  const { id: productionId, workroomId, inputRevision } = production;
  // The registers are shared, so plans of the others are stale too.
  const others = await tx.production.updateMany({
    where: { companyId: company, id: { not: productionId } },
    data: { inputRevision: { increment: 1 } },
  });
  const saving = { tx, companyId: company, workroomId, productionId, whole: others.count === 0, before: null, known: new Map() };
  await saveParts(saving, staging, null);
  await writeAuditIn(tx, company, {
    user,
    production: productionId,
    action: created ? "production added" : "production replaced",
    subject: { table: "Production", id: productionId },
    detail: `${staging.production.title}: ${staging.pieces.length} pieces, ${staging.casting.length} places in casts`,
  });
  return ok({ productionId, workroomId, inputRevision, created });
}

async function saveProduction(tx: Transaction, companyId: string, production: Production) {
  const { workroom: room, starts, zone, ...rest } = production;
  const where = { companyId_code: { companyId, code: room } };
  const workroom = await tx.workroom.upsert({ where, create: { companyId, code: room, name: room, zone }, update: { zone } });
  const values = { ...rest, workroomId: workroom.id, starts: databaseDate(starts) };
  const key = { companyId, code: production.code };
  const there = await tx.production.findUnique({ where: { companyId_code: key } });
  const saved = there
    ? await tx.production.update({
        where: { id: there.id },
        data: { ...values, inputRevision: { increment: 1 }, version: { increment: 1 } },
      })
    : await tx.production.create({ data: { companyId, ...values } });
  return { production: saved, created: !there };
}
