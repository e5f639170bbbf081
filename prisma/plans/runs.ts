import type { Measures } from "#lib/levelling/problem";
import type { AuthorizedCompany } from "../authorized";
import { database, type Transaction } from "../client";
import type { PlanRun, Prisma } from "../generated/client";
import { newId } from "../ids";

/** A worker that has said nothing for so long is gone. */
const SILENT_MS = 120_000;
const SILENT = "The job process fell silent. Level again.";

export type RunState = "queued" | "running" | "finished" | "stopped" | "failed";

/** How far a levelling is. */
export interface Run {
  readonly id: string;
  readonly state: RunState;
  readonly stopRequested: boolean;
  readonly seed: number;
  readonly rounds: number;
  readonly round: number;
  /** The best so far; null before the first round. */
  readonly progress: Measures | null;
  readonly error: string | null;
  readonly planId: string | null;
  /** User who asked; null for the program itself. */
  readonly startedBy: string | null;
  readonly createdAt: Date;
  readonly endedAt: Date | null;
}

export interface RunWish {
  readonly productionCode: string;
  readonly user: string | null;
  readonly seed: number;
  readonly rounds: number;
}

export interface StartedRun {
  readonly run: Run;
  readonly started: boolean;
}

/** What the job `level` is given. */
export interface LevelJob {
  readonly companyId: string;
  readonly runId: string;
  readonly productionCode: string;
}

/**
 * Asks for a levelling: the run and the job `level` are there together or not at all. A production has one run at a time: while
 * one is active it is returned, with `started` false. One whose worker fell silent is first marked as failed. Null: no such production.
 */
export const startRun = (company: AuthorizedCompany, wish: RunWish): Promise<StartedRun | null> =>
  database().$transaction((tx) => startRunIn(tx, company, wish));

/** The same inside a transaction of the caller. */
export async function startRunIn(tx: Transaction, company: AuthorizedCompany, wish: RunWish): Promise<StartedRun | null> {
  const companyId: string = company;
  const { productionCode, user, seed, rounds } = wish;
  const production = await tx.production.findUnique({ where: { companyId_code: { companyId, code: productionCode } } });
  if (!production) return null;
  const { id: productionId, workroomId } = production;
  await tx.$queryRaw`select id from production where id = ${productionId}::uuid for update`;
  const silent = { companyId, productionId, state: "running", reportedAt: { lt: new Date(Date.now() - SILENT_MS) } };
  await tx.planRun.updateMany({ where: silent, data: { state: "failed", error: SILENT, endedAt: new Date() } });
  const active = await tx.planRun.findFirst({ where: { companyId, productionId, state: { in: ["queued", "running"] } } });
  if (active) return { run: asRun(active), started: false };
  const run = await tx.planRun.create({
    data: { id: newId(), companyId, workroomId, productionId, startedById: user, state: "queued", seed, rounds },
  });
  const job: LevelJob = { companyId, runId: run.id, productionCode };
  await tx.$queryRaw`select 1 from graphile_worker.add_job('level', ${JSON.stringify(job)}::json, job_key := ${`level ${productionId}`}, max_attempts := 1)`;
  return { run: asRun(run), started: true };
}

/** The worker takes a run up. False when it was stopped or ended before: then there is nothing to do. */
export const takeUpRun = (company: AuthorizedCompany, runId: string): Promise<boolean> =>
  change(company, runId, ["queued"], { state: "running", reportedAt: new Date() });

/** The worker says how far it is, and learns whether to stop. A run that is no longer running is to be stopped too. */
export async function reportRun(
  company: AuthorizedCompany,
  runId: string,
  report: { readonly round: number; readonly best: Measures },
): Promise<{ readonly stop: boolean }> {
  const progress = JSON.parse(JSON.stringify(report.best)) as Prisma.InputJsonValue;
  const running = await change(company, runId, ["running"], { round: report.round, progress, reportedAt: new Date() });
  const run = await database().planRun.findUnique({ where: { companyId_id: { companyId: company, id: runId } } });
  return { stop: !running || run?.stopRequested !== false };
}

/** Asks a run to stop and keep its best plan; one still in the queue is stopped at once. False when it has ended. */
export async function stopRun(company: AuthorizedCompany, runId: string): Promise<boolean> {
  if (await change(company, runId, ["queued"], { state: "stopped", stopRequested: true, endedAt: new Date() })) return true;
  return change(company, runId, ["running"], { stopRequested: true });
}

/** The worker has kept a plan: finished, or stopped when that was asked for. */
export async function finishRun(company: AuthorizedCompany, runId: string, planId: string): Promise<boolean> {
  const asked = { companyId: company, id: runId, stopRequested: true };
  const state = (await database().planRun.count({ where: asked })) > 0 ? "stopped" : "finished";
  return change(company, runId, ["running"], { state, planId, endedAt: new Date() });
}

/** The run came to nothing, with a sentence a supervisor can read. */
export const failRun = (company: AuthorizedCompany, runId: string, error: string): Promise<boolean> =>
  change(company, runId, ["queued", "running"], { state: "failed", error, endedAt: new Date() });

/** The newest run of a production; null when there was none. */
export async function latestRun(company: AuthorizedCompany, productionCode: string): Promise<Run | null> {
  const row = await database().planRun.findFirst({
    where: { companyId: company, production: { code: productionCode } },
    orderBy: [{ createdAt: "desc" }, { id: "desc" }],
  });
  return row && asRun(row);
}

async function change(
  company: AuthorizedCompany,
  runId: string,
  from: readonly RunState[],
  data: Prisma.PlanRunUncheckedUpdateManyInput,
): Promise<boolean> {
  const { count } = await database().planRun.updateMany({ where: { companyId: company, id: runId, state: { in: [...from] } }, data });
  return count > 0;
}

const asRun = (row: PlanRun): Run => ({
  id: row.id,
  ...stateOf(row),
  stopRequested: row.stopRequested,
  seed: row.seed,
  rounds: row.rounds,
  round: row.round,
  progress: row.progress as unknown as Measures | null,
  planId: row.planId,
  startedBy: row.startedById,
  createdAt: row.createdAt,
  endedAt: row.endedAt,
});

/** A run whose worker fell silent is as good as failed, though nobody is left to write it down. */
function stateOf({ state, error, reportedAt }: PlanRun): Pick<Run, "state" | "error"> {
  const silent = state === "running" && reportedAt.getTime() < Date.now() - SILENT_MS;
  return silent ? { state: "failed", error: SILENT } : { state: state as RunState, error };
}
