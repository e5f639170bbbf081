import type { Edit } from "#lib/editing/edit";
import { fileKeyOf } from "#lib/editing/rows";
import type { Staging } from "#lib/staging/staging";
import type { FileKey } from "#lib/staging/tables";
import { writeAuditIn } from "../audit";
import type { Transaction } from "../client";
import { newId } from "../ids";
import { databaseDate } from "../plainDates";
import type { LoadedStaging } from "../stagings/load";
import { saveParts } from "../stagings/saveParts";
import type { Entry } from "./keepEdit";

/** Files whose rows all productions of the company share, and those that the productions of a workroom do. */
const OF_COMPANY: readonly FileKey[] = ["sizes", "performers", "measurements", "calls", "materials", "offers", "lots", "stock"];
const OF_WORKROOM: readonly FileKey[] = ["makers", "machines", "absences"];

const WORDS = { do: "edited", undo: "put back", redo: "done again" } as const;

/** Writes what an edit changed, and the edit itself; its id. */
export async function saveEditIn(
  tx: Transaction,
  companyId: string,
  { productionId, workroomId, staging: before }: LoadedStaging,
  staging: Staging,
  { title, changes }: Edit,
  { user, kind, takesBackId }: Entry,
): Promise<string> {
  const files = new Set(changes.map(({ file }) => fileKeyOf(file)));
  if (files.has("production")) await saveProduction(tx, productionId, workroomId, staging);
  await saveParts({ tx, companyId, workroomId, productionId, whole: true, before, known: new Map() }, staging, files);
  const touches = (keys: readonly FileKey[]) => keys.some((key) => files.has(key));
  const ofWorkroom = touches(OF_WORKROOM) || before.production.zone !== staging.production.zone;
  const stale = touches(OF_COMPANY) ? {} : ofWorkroom ? { workroomId } : { id: productionId };
  await tx.production.updateMany({ where: { companyId, ...stale }, data: { inputRevision: { increment: 1 } } });
  // Not the moment the transaction began: it may have waited for another's.
  const at = new Date();
  const id = newId(at.getTime());
  const rows = changes.map(({ file, before: was, after, at: place }) => ({
    file,
    before: was,
    after,
    ...(place === undefined ? {} : { at: place }),
  }));
  await tx.edit.create({ data: { id, companyId, productionId, byId: user, at, kind, title, changes: rows, takesBackId } });
  const subject = { table: "Edit", id };
  await writeAuditIn(tx, companyId, { user, production: productionId, action: WORDS[kind], subject, detail: title });
  return id;
}

async function saveProduction(tx: Transaction, id: string, workroomId: string, { production }: Staging): Promise<void> {
  const { workroom: _, zone, starts, ...values } = production;
  await tx.workroom.update({ where: { id: workroomId }, data: { zone } });
  await tx.production.update({ where: { id }, data: { ...values, starts: databaseDate(starts), version: { increment: 1 } } });
}
