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
  return database().$transaction((tx) => loadStagingIn(tx, company, productionCode), { isolationLevel: "RepeatableRead", timeout: 30_000 });
}

/** The same inside a transaction that does more. */
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
