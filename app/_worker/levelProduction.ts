import type { Logger } from "pino";
import { checkPlan } from "#lib/levelling/checker/checkPlan";
import { withHandPins } from "#lib/planning/handPins";
import { storePlan } from "#lib/planning/restore";
import { type AuthorizedCompany, authorizeCompany } from "#prisma/authorized";
import { loadHandPins } from "#prisma/plans/handPins";
import { publishPlan } from "#prisma/plans/publish";
import { failRun, finishRun, type LevelJob, latestRun, type Run, takeUpRun } from "#prisma/plans/runs";
import { savePlan } from "#prisma/plans/save";
import { loadStaging } from "#prisma/stagings/load";
import { prepareProduction } from "../_data/prepareProduction";
import { todayIn } from "../_data/today";
import { levelInThread } from "./levelInThread";
import { reportWhile } from "./reportWhile";
import { startThread } from "./startThread";

/** A search ends after this, whatever the rounds asked for. */
const LONGEST_SECONDS = 60;

export interface JobContext {
  /** Aborted when the process is to end. */
  readonly signal: AbortSignal;
  readonly log: Logger;
}

/**
 * Does one levelling: loads the production, searches, has the plan judged, keeps and publishes it. Whatever happens, the run says how
 * it ended.
 */
export async function levelProduction(job: LevelJob, context: JobContext): Promise<void> {
  // The job was put into the queue by a request that had passed the gate for this company.
  const company = authorizeCompany(job.companyId);
  if (!(await takeUpRun(company, job.runId))) return;
  try {
    const run = await latestRun(company, job.productionCode);
    const trouble = run?.id === job.runId ? await levelRun(company, job, run, context) : "Another levelling was asked for since.";
    if (trouble) await failRun(company, job.runId, trouble);
  } catch (error) {
    await failRun(company, job.runId, "Levelling broke off: this is a defect of the program. The log of the job process has the details.");
    throw error;
  }
}

/** Levelled again when another production's plan was published meanwhile and took some of the same time. */
const MOST_TRIES = 3;

/** @returns null when a plan was kept, else a sentence that says why not */
async function levelRun(company: AuthorizedCompany, job: LevelJob, run: Run, context: JobContext): Promise<string | null> {
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const trouble = await levelOnce(company, job, run, context);
    if (trouble !== "time taken") return trouble;
  }
  return "Other productions of the workroom were levelled again and again meanwhile. Level again once they are done.";
}

/** @returns null when a plan was kept, `time taken` when another production was faster, else a sentence that says why not */
async function levelOnce(company: AuthorizedCompany, job: LevelJob, run: Run, { signal, log }: JobContext): Promise<string | null> {
  const loaded = await loadStaging(company, job.productionCode);
  if (!loaded) return "The production is no longer there.";
  const { staging, workroomId, productionId, inputRevision } = loaded;
  const beside = await prepareProduction(company, loaded, todayIn(staging.production.zone));
  const prepared = withHandPins(beside.prepared, await loadHandPins(company, productionId));
  const answer = await reportWhile(company, run.id, signal, ({ stop, onProgress }) =>
    levelInThread(
      prepared.problem,
      { seed: run.seed, rounds: run.rounds, seconds: LONGEST_SECONDS, signal: stop, onProgress },
      startThread,
    ),
  );
  const faults = checkPlan(prepared.problem, answer.plan);
  if (faults.length > 0) {
    log.error({ runId: run.id, faults }, "an illegal plan");
    return `The plan found breaks a rule and was not kept; this is a defect of the program: ${faults[0]}`;
  }
  const name = `Levelled with seed ${answer.seed}, ${answer.rounds} rounds`;
  const planId = await savePlan(
    company,
    { workroomId, productionId, user: run.startedBy, name },
    storePlan(prepared, answer, inputRevision),
  );
  const published = await publishPlan(company, run.startedBy, planId);
  if (!published.ok) return published.error;
  await finishRun(company, run.id, planId);
  log.info({ runId: run.id, planId, rounds: answer.rounds, schedules: answer.schedules }, "levelled");
  return null;
}
