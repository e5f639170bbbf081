import * as z from "zod";
import type { CutQuestion } from "#lib/cutting/question";
import { checkAnswer } from "#lib/cutting/searchCuts";
import { assemble } from "#lib/planning/assemble";
import { restorePlan } from "#lib/planning/restore";
import { withFoundCuts } from "#lib/planning/withFoundCuts";
import { type AuthorizedCompany, authorizeCompany } from "#prisma/authorized";
import { loadCurrentPlan } from "#prisma/plans/load";
import { loadStaging } from "#prisma/stagings/load";
import { keepAnswer, loadFoundCuts } from "#prisma/stock/cuttingProofs";
import { prepareProduction } from "../_data/prepareProduction";
import { todayIn } from "../_data/today";
import { cutInThread } from "./cutInThread";
import type { JobContext } from "./levelProduction";

/** A question is searched for so long: the proofs of a wardrobe's rods and strips take less than one second. */
const SECONDS = 20;
/** Answers change what is bought, and that what is asked: after so many rounds it is left at that. */
const ROUNDS = 3;

const shape = z.object({ companyId: z.uuid(), productionCode: z.string().min(1) });

/** What the queue holds, checked: it may come from an older version. @throws when it is no such job */
export const asCutJob = (payload: unknown): z.output<typeof shape> => shape.parse(payload);

/** Searches for better cutting plans of a production, one question after the other, and keeps each answer as it comes. */
export async function proveCutting(job: z.output<typeof shape>, { signal, log }: JobContext): Promise<void> {
  // The job was put into the queue by a request that had passed the gate for this company.
  const company = authorizeCompany(job.companyId);
  for (let round = 0; round < ROUNDS; round++) {
    const questions = await openQuestions(company, job.productionCode);
    for (const question of questions) {
      if (signal.aborted) return;
      await answer(company, question, { signal, log });
    }
    log.info({ production: job.productionCode, questions: questions.length, round }, "cutting searched");
    if (questions.length === 0) return;
  }
}

async function openQuestions(company: AuthorizedCompany, code: string): Promise<readonly CutQuestion[]> {
  const [loaded, kept, cuts] = await Promise.all([loadStaging(company, code), loadCurrentPlan(company, code), loadFoundCuts(company)]);
  if (!loaded || !kept) return [];
  const { prepared } = await prepareProduction(company, loaded, todayIn(loaded.staging.production.zone));
  const { cutting } = withFoundCuts(assemble(prepared, restorePlan(prepared, kept.plan)), cuts.found);
  return cutting.flatMap(({ question }) => (question && !cuts.isEnded(question) ? [question] : []));
}

async function answer(company: AuthorizedCompany, question: CutQuestion, { signal, log }: JobContext): Promise<void> {
  let keeping: Promise<unknown> = Promise.resolve();
  await cutInThread(question, {
    signal,
    seconds: SECONDS,
    onAnswer: ({ answer: found, done }) => {
      const faults = checkAnswer(question, found);
      if (faults.length > 0) log.error({ faults }, "an illegal cutting plan");
      // One after the other, however slow the database is.
      else keeping = keeping.then(() => keepAnswer(company, question, found, done));
    },
  });
  await keeping;
}
