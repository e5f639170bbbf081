import { pino } from "pino";
import { beforeAll, describe, expect, it } from "vitest";
import { checkPlan } from "#lib/levelling/checker/checkPlan";
import { prepare } from "#lib/planning/prepare";
import { restorePlan } from "#lib/planning/restore";
import { type AuthorizedCompany, authorizeCompany } from "#prisma/authorized";
import { database } from "#prisma/client";
import { loadDemonstration } from "#prisma/demonstration/load";
import { loadCurrentPlan } from "#prisma/plans/load";
import { latestRun, startRun, stopRun } from "#prisma/plans/runs";
import { loadStaging } from "#prisma/stagings/load";
import { todayIn } from "../../app/_data/today";
import { levelProduction } from "../../app/_worker/levelProduction";
import { serveDatabase } from "../database/support/serve";

const given = serveDatabase();
const log = pino({ level: "silent" });

let company: AuthorizedCompany;
let code: string;
beforeAll(async () => {
  await loadDemonstration(given.url);
  process.env.DATABASE_URL = given.url;
  const production = await database().production.findFirstOrThrow();
  company = authorizeCompany(production.companyId);
  code = production.code;
  const wish = await latestRun(company, code);
  if (!wish || !(await stopRun(company, wish.id))) throw new Error("The demonstration asks for a levelling of its own.");
});

/** Asks for a levelling as a supervisor does. */
async function ask(rounds: number): Promise<string> {
  const begun = await startRun(company, { productionCode: code, user: null, seed: 1, rounds });
  if (!begun?.started) throw new Error("A levelling is under way already.");
  return begun.run.id;
}

const work = (runId: string, signal = new AbortController().signal) =>
  levelProduction({ companyId: company, runId, productionCode: code }, { signal, log });

/** The workroom's plan as it was kept, judged again. */
async function judgeKept(): Promise<readonly string[]> {
  const [loaded, kept] = await Promise.all([loadStaging(company, code), loadCurrentPlan(company, code)]);
  if (!loaded || !kept?.current) throw new Error("No plan was published.");
  const prepared = prepare(loaded.staging, { today: todayIn(loaded.staging.production.zone) });
  return checkPlan(prepared.problem, restorePlan(prepared, kept.plan).plan);
}

describe("the levelling job", () => {
  it("keeps and publishes a plan that the checker still accepts when it is read back", async () => {
    const runId = await ask(3);
    await work(runId);
    expect(await latestRun(company, code)).toMatchObject({ id: runId, state: "finished", error: null });
    expect(await judgeKept()).toEqual([]);
  });

  it("stops when asked, long before its rounds are done, and keeps the best plan so far", async () => {
    const runId = await ask(1_000_000);
    const working = work(runId);
    await expect.poll(async () => (await latestRun(company, code))?.round ?? 0, { timeout: 20_000 }).toBeGreaterThan(0);
    expect(await stopRun(company, runId)).toBe(true);
    await working;
    const run = await latestRun(company, code);
    expect(run?.state).toBe("stopped");
    expect((await loadCurrentPlan(company, code))?.planId).toBe(run?.planId);
    expect(await judgeKept()).toEqual([]);
  });

  it("keeps the best plan so far when its process is to end", async () => {
    const runId = await ask(1_000_000);
    await work(runId, AbortSignal.timeout(1_500));
    const run = await latestRun(company, code);
    expect([run?.state, run?.planId === null]).toEqual(["finished", false]);
  });

  it("does nothing for a run that was stopped while it waited", async () => {
    const runId = await ask(3);
    await stopRun(company, runId);
    await work(runId);
    expect(await latestRun(company, code)).toMatchObject({ id: runId, state: "stopped", planId: null });
  });

  it("says so in the run when the production has gone", async () => {
    const runId = await ask(3);
    await levelProduction({ companyId: company, runId, productionCode: "gone" }, { signal: AbortSignal.timeout(60_000), log });
    expect(await latestRun(company, code)).toMatchObject({ state: "failed", error: expect.stringContaining("Another levelling") });
  });
});
