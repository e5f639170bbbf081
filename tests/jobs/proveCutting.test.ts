import { pino } from "pino";
import { beforeAll, describe, expect, it } from "vitest";
import { assemble } from "#lib/planning/assemble";
import { restorePlan } from "#lib/planning/restore";
import { withFoundCuts } from "#lib/planning/withFoundCuts";
import { type AuthorizedCompany, authorizeCompany } from "#prisma/authorized";
import { database } from "#prisma/client";
import { loadDemonstration } from "#prisma/demonstration/load";
import { loadCurrentPlan } from "#prisma/plans/load";
import { latestRun } from "#prisma/plans/runs";
import { loadStaging } from "#prisma/stagings/load";
import { askForCuts, cutsAreSought } from "#prisma/stock/askForCuts";
import { loadFoundCuts } from "#prisma/stock/cuttingProofs";
import { prepareProduction } from "../../app/_data/prepareProduction";
import { todayIn } from "../../app/_data/today";
import { levelProduction } from "../../app/_worker/levelProduction";
import { asCutJob, proveCutting } from "../../app/_worker/proveCutting";
import { serveDatabase } from "../database/support/serve";

const given = serveDatabase();
const context = { signal: new AbortController().signal, log: pino({ level: "silent" }) };

let company: AuthorizedCompany;
let code: string;
beforeAll(async () => {
  await loadDemonstration(given.url);
  process.env.DATABASE_URL = given.url;
  const production = await database().production.findFirstOrThrow();
  company = authorizeCompany(production.companyId);
  code = production.code;
  const wish = await latestRun(company, code);
  await database().planRun.updateMany({ where: { id: wish?.id ?? "" }, data: { rounds: 0 } });
  await levelProduction({ companyId: company, runId: wish?.id ?? "", productionCode: code }, context);
});

const cuttingNow = async () => {
  const [loaded, kept, cuts] = await Promise.all([loadStaging(company, code), loadCurrentPlan(company, code), loadFoundCuts(company)]);
  if (!loaded || !kept) throw new Error("No plan.");
  const { prepared } = await prepareProduction(company, loaded, todayIn(loaded.staging.production.zone));
  return withFoundCuts(assemble(prepared, restorePlan(prepared, kept.plan)), cuts.found).cutting;
};

describe("the cutting job", () => {
  it("leaves no question of a plan unanswered", async () => {
    await proveCutting(asCutJob({ companyId: company, productionCode: code }), context);
    const [after, cuts] = [await cuttingNow(), await loadFoundCuts(company)];
    expect(after.length).toBeGreaterThan(10);
    for (const { question } of after) expect(question === null || cuts.found(question) !== null).toBe(true);
  });

  it("waits in the queue once, however often it is asked for", async () => {
    expect(await cutsAreSought(company, code)).toBe(false);
    await askForCuts(company, code);
    await askForCuts(company, code);
    expect(await cutsAreSought(company, code)).toBe(true);
    const jobs = await database().$queryRaw<unknown[]>`select 1 from graphile_worker.jobs where task_identifier = 'cuts'`;
    expect(jobs.length).toBe(1);
  });
});
