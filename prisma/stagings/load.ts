import type { Production, Staging } from "#lib/staging/staging";
import type { AuthorizedCompany } from "../authorized";
import { database, type Transaction } from "../client";
import { plainDate } from "../plainDates";
import { loadCasting } from "./loadCasting";
import { loadMaterials } from "./loadMaterials";
import { loadOtherWork } from "./loadOtherWork";
import { loadPeople } from "./loadPeople";
import { loadWardrobe } from "./loadWardrobe";
import { loadWorkroom } from "./loadWorkroom";

export interface LoadedStaging {
  readonly staging: Staging;
  readonly productionId: string;
  readonly workroomId: string;
  readonly inputRevision: number;
}

/** A production with its workroom and the company's registers, all as of one moment; null when the company has none of that code. */
export function loadStaging(company: AuthorizedCompany, productionCode: string): Promise<LoadedStaging | null> {
  return database().$transaction((tx) => loadRemembered(tx, company, productionCode), {
    isolationLevel: "RepeatableRead",
    timeout: 30_000,
  });
}

const MOST_REMEMBERED = 8;
const remembered = new Map<string, LoadedStaging>();

/** The same inside a transaction that does more. One of this revision that was loaded before is not loaded again: all that a staging holds is written together with a new revision. */
export async function loadRemembered(tx: Transaction, companyId: string, code: string): Promise<LoadedStaging | null> {
  const row = await tx.production.findUnique({ where: { companyId_code: { companyId, code } }, select: { id: true, inputRevision: true } });
  if (!row) return null;
  const known = remembered.get(`${row.id} ${row.inputRevision}`);
  const loaded = known ?? (await loadStagingIn(tx, companyId, code));
  if (loaded) rememberStaging(loaded);
  return loaded;
}

/** Keeps a staging that is in the database as it is, once that is certain; the least recently used goes first. */
export const rememberStaging = (loaded: LoadedStaging): void => {
  const name = `${loaded.productionId} ${loaded.inputRevision}`;
  remembered.delete(name);
  remembered.set(name, loaded);
  const oldest = remembered.keys().next().value;
  if (remembered.size > MOST_REMEMBERED && oldest !== undefined) remembered.delete(oldest);
};

/** Loaded anew, also when the transaction itself has changed it. */
export async function loadStagingIn(tx: Transaction, companyId: string, code: string): Promise<LoadedStaging | null> {
  const row = await tx.production.findUnique({ where: { companyId_code: { companyId, code } }, include: { workroom: true } });
  if (!row) return null;
  const production: Production = {
    code: row.code,
    title: row.title,
    subtitle: row.subtitle,
    workroom: row.workroom.code,
    starts: plainDate(row.starts),
    budget: row.budget === null ? null : Number(row.budget),
    currency: row.currency,
    zone: row.workroom.zone,
    words: row.words as Production["words"],
    lengths: row.lengths as Production["lengths"],
    prefix: row.prefix,
    visitsPerWeek: row.visitsPerWeek,
  };
  const people = await loadPeople(tx, companyId);
  const workroom = await loadWorkroom(tx, companyId, row.workroomId);
  const materials = await loadMaterials(tx, companyId);
  const casting = await loadCasting(tx, companyId, row.id);
  const wardrobe = await loadWardrobe(tx, companyId, row.id);
  const otherWork = await loadOtherWork(tx, companyId, row.id);
  return {
    staging: { production, ...people, ...workroom, ...materials, ...casting, ...wardrobe, ...otherWork },
    productionId: row.id,
    workroomId: row.workroomId,
    inputRevision: row.inputRevision,
  };
}
