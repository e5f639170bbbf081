import type { Remedy } from "#lib/whatif/remedies/remedy";
import type { WhatHelps } from "#lib/whatif/remedies/whatHelps";
import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";
import type { Prisma, RemedyRun as Row } from "../generated/client";
import { newId } from "../ids";

/** A worker that has said nothing for so long is gone. */
const SILENT_MS = 120_000;
const SILENT = "The job process fell silent. Ask again.";

/** One search for what would help a plan. */
export interface RemedyRun {
  readonly id: string;
  /** The plan that is to be helped. */
  readonly planId: string;
  readonly state: "queued" | "running" | "finished" | "failed";
  /** Empty: those that the causes of lateness suggest. */
  readonly asked: readonly Remedy[];
  /** Plans made, of so many. */
  readonly made: number;
  readonly plans: number;
  /** Null until it is finished. */
  readonly found: WhatHelps | null;
  readonly error: string | null;
  readonly startedBy: string | null;
}

/** What the job `remedies` is given. */
export interface RemedyJob {
  readonly companyId: string;
  readonly runId: string;
  readonly productionCode: string;
}

export interface RemedyWish {
  readonly productionId: string;
  readonly productionCode: string;
  readonly planId: string;
  readonly user: string | null;
  readonly asked: readonly Remedy[];
}

/** Asks what would help a plan: the run and its job are there together or not at all. A production has one at a time: while one is active, nothing is begun. */
export const startRemedyRun = (company: AuthorizedCompany, wish: RemedyWish): Promise<"begun" | "one is active"> =>
  database().$transaction(async (tx) => {
    const companyId: string = company;
    const { productionId, productionCode, planId, user, asked } = wish;
    await tx.$queryRaw`select id from production where company_id = ${companyId}::uuid and id = ${productionId}::uuid for update`;
    const silent = { companyId, productionId, state: "running", reportedAt: { lt: new Date(Date.now() - SILENT_MS) } };
    await tx.remedyRun.updateMany({ where: silent, data: { state: "failed", error: SILENT, endedAt: new Date() } });
    const active = await tx.remedyRun.count({ where: { companyId, productionId, state: { in: ["queued", "running"] } } });
    if (active > 0) return "one is active";
    const { id } = await tx.remedyRun.create({
      data: { id: newId(), companyId, productionId, planId, startedById: user, state: "queued", asked: asJson(asked) },
    });
    const job: RemedyJob = { companyId, runId: id, productionCode };
    await tx.$queryRaw`select 1 from graphile_worker.add_job('remedies', ${JSON.stringify(job)}::json, max_attempts := 1)`;
    return "begun";
  });

/** The worker takes a run up; null when it has ended, or another has it: then there is nothing to do. */
export async function takeUpRemedyRun(company: AuthorizedCompany, runId: string): Promise<RemedyRun | null> {
  if (!(await change(company, runId, ["queued"], { state: "running", reportedAt: new Date() }))) return null;
  const row = await database().remedyRun.findUnique({ where: { companyId_id: { companyId: company, id: runId } } });
  return row && asRun(row);
}

/** The worker says how far it is. */
export const reportRemedyRun = (company: AuthorizedCompany, runId: string, made: number, plans: number): Promise<boolean> =>
  change(company, runId, ["running"], { made, plans, reportedAt: new Date() });

export const finishRemedyRun = (company: AuthorizedCompany, runId: string, found: WhatHelps): Promise<boolean> =>
  change(company, runId, ["running"], { state: "finished", found: asJson(found), endedAt: new Date() });

/** The run came to nothing, with a sentence a supervisor can read. */
export const failRemedyRun = (company: AuthorizedCompany, runId: string, error: string): Promise<boolean> =>
  change(company, runId, ["queued", "running"], { state: "failed", error, endedAt: new Date() });

/** The newest of a production; null when nobody asked yet. */
export async function latestRemedyRun(company: AuthorizedCompany, productionId: string): Promise<RemedyRun | null> {
  const row = await database().remedyRun.findFirst({
    where: { companyId: company, productionId },
    orderBy: [{ createdAt: "desc" }, { id: "desc" }],
  });
  return row && asRun(row);
}

async function change(
  company: AuthorizedCompany,
  runId: string,
  from: readonly RemedyRun["state"][],
  data: Prisma.RemedyRunUncheckedUpdateManyInput,
): Promise<boolean> {
  const { count } = await database().remedyRun.updateMany({ where: { companyId: company, id: runId, state: { in: [...from] } }, data });
  return count > 0;
}

const asJson = (value: unknown) => JSON.parse(JSON.stringify(value)) as Prisma.InputJsonValue;

const asRun = (row: Row): RemedyRun => {
  const silent = row.state === "running" && row.reportedAt.getTime() < Date.now() - SILENT_MS;
  return {
    id: row.id,
    planId: row.planId,
    state: silent ? "failed" : (row.state as RemedyRun["state"]),
    asked: row.asked as unknown as readonly Remedy[],
    made: row.made,
    plans: row.plans,
    found: row.found as unknown as WhatHelps | null,
    error: silent ? SILENT : row.error,
    startedBy: row.startedById,
  };
};
