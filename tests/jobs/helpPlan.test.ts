import { pino } from "pino";
import { beforeAll, describe, expect, it } from "vitest";
import { type AuthorizedCompany, authorizeCompany } from "#prisma/authorized";
import { database } from "#prisma/client";
import { loadDemonstration } from "#prisma/demonstration/load";
import { loadCurrentPlan } from "#prisma/plans/load";
import { latestRemedyRun, startRemedyRun } from "#prisma/plans/remedyRuns";
import { latestRun } from "#prisma/plans/runs";
import { helpPlan } from "../../app/_worker/helpPlan";
import { levelProduction } from "../../app/_worker/levelProduction";
import { serveDatabase } from "../database/support/serve";

const given = serveDatabase();
const context = { signal: new AbortController().signal, log: pino({ level: "silent" }) };

let company: AuthorizedCompany;
let productionId: string;
let code: string;
beforeAll(async () => {
  await loadDemonstration(given.url, { staging: "impossible" });
  process.env.DATABASE_URL = given.url;
  const production = await database().production.findFirstOrThrow();
  company = authorizeCompany(production.companyId);
  ({ id: productionId, code } = production);
  const wish = await latestRun(company, code);
  await levelProduction({ companyId: company, runId: wish!.id, productionCode: code }, context);
});

const ask = async (asked: Parameters<typeof startRemedyRun>[1]["asked"]) => {
  const kept = await loadCurrentPlan(company, code);
  const begun = await startRemedyRun(company, { productionId, productionCode: code, planId: kept!.planId, user: null, asked });
  return { begun, run: (await latestRemedyRun(company, productionId))! };
};

describe("the job that tries remedies", () => {
  it("tries what the causes suggest, and finds that the net sooner brings everything in time", async () => {
    const { begun, run } = await ask([]);
    expect(begun).toBe("begun");
    await helpPlan({ companyId: company, runId: run.id, productionCode: code }, context);
    const ended = await latestRemedyRun(company, productionId);
    expect(ended).toMatchObject({ state: "finished", error: null, made: ended!.plans });
    expect(ended!.found!.answers[0]).toMatchObject({
      remedy: { kind: "deliver", material: "net-stiff-white" },
      tried: { figures: { lateGarments: 0 } },
    });
    expect(ended!.found!.unchanged.lateGarments).toBe(2);
  });

  it("takes one at a time, and does nothing for a run that has ended", async () => {
    const { run } = await ask([{ kind: "machine", machine: "fitting room" }]);
    expect((await ask([])).begun).toBe("one is active");
    await helpPlan({ companyId: company, runId: run.id, productionCode: code }, context);
    const ended = await latestRemedyRun(company, productionId);
    expect(ended).toMatchObject({ state: "finished" });
    await helpPlan({ companyId: company, runId: run.id, productionCode: code }, context);
    expect(await latestRemedyRun(company, productionId)).toEqual(ended);
  });

  it("says so when the production has been levelled since", async () => {
    const { run } = await ask([]);
    await database().plan.updateMany({ where: { companyId: company }, data: { current: false } });
    await database().plan.create({
      data: {
        ...{ companyId: company, productionId, name: "later", seed: 1, rounds: 0, schedules: 0, rule: "plain", inputRevision: 1 },
        ...{ workroomId: (await database().workroom.findFirstOrThrow()).id, measures: {}, bounds: {} },
      },
    });
    await helpPlan({ companyId: company, runId: run.id, productionCode: code }, context);
    expect(await latestRemedyRun(company, productionId)).toMatchObject({ state: "failed", error: expect.stringContaining("another plan") });
  });
});
