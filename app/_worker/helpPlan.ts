import { assemble } from "#lib/planning/assemble";
import { withHandPins } from "#lib/planning/handPins";
import { restorePlan } from "#lib/planning/restore";
import { candidates } from "#lib/whatif/remedies/candidates";
import { whatHelps } from "#lib/whatif/remedies/whatHelps";
import { type AuthorizedCompany, authorizeCompany } from "#prisma/authorized";
import { loadHandPins } from "#prisma/plans/handPins";
import { loadCurrentPlan } from "#prisma/plans/load";
import { failRemedyRun, finishRemedyRun, type RemedyJob, type RemedyRun, reportRemedyRun, takeUpRemedyRun } from "#prisma/plans/remedyRuns";
import { loadStaging } from "#prisma/stagings/load";
import { prepareProduction } from "../_data/prepareProduction";
import { todayIn } from "../_data/today";
import { levelInThread } from "./levelInThread";
import type { JobContext } from "./levelProduction";
import { startThread } from "./startThread";

/** Each plan is searched for so long: seconds even for a company's production, and the same answer again. */
const SEARCH = { seed: 1, rounds: 3, seconds: 20 };

/** Finds what would help the plan of a production: one plan for each remedy. Whatever happens, the run says how it ended. */
export async function helpPlan(job: RemedyJob, { signal, log }: JobContext): Promise<void> {
  // The job was put into the queue by a request that had passed the gate for this company.
  const company = authorizeCompany(job.companyId);
  const run = await takeUpRemedyRun(company, job.runId);
  if (!run) return;
  try {
    const trouble = await helped(company, job, run, signal);
    if (trouble) await failRemedyRun(company, run.id, trouble);
    else log.info({ runId: run.id }, "remedies tried");
  } catch (error) {
    await failRemedyRun(company, run.id, "This broke off: it is a defect of the program. The log of the job process has the details.");
    throw error;
  }
}

/** @returns null when it is finished, else a sentence that says why not */
async function helped(company: AuthorizedCompany, job: RemedyJob, run: RemedyRun, signal: AbortSignal): Promise<string | null> {
  const [loaded, kept] = await Promise.all([loadStaging(company, job.productionCode), loadCurrentPlan(company, job.productionCode)]);
  if (!loaded) return "The production is no longer there.";
  if (kept?.planId !== run.planId) return "The production has another plan by now. Ask again.";
  const today = todayIn(loaded.staging.production.zone);
  const { prepared, beside } = await prepareProduction(company, loaded, today);
  const plan = assemble(prepared, restorePlan(prepared, kept.plan));
  const pins = await loadHandPins(company, loaded.productionId);
  let reporting: Promise<unknown> = Promise.resolve();
  const found = await whatHelps(
    plan,
    run.asked.length > 0 ? run.asked : candidates(plan, today),
    {
      today,
      ready: (fresh) => withHandPins(beside(fresh), pins),
      level: (problem) => levelInThread(problem, { ...SEARCH, signal }, startThread),
    },
    (made, plans) => {
      // One after the other, however slow the database is; a report that fails is made good by the next.
      reporting = reporting.then(() => reportRemedyRun(company, run.id, made, plans)).catch(() => undefined);
    },
  );
  await reporting;
  if (signal.aborted) return "The job process was ended meanwhile. Ask again.";
  await finishRemedyRun(company, run.id, found);
  return null;
}
