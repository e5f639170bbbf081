import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import type { AuthorizedCompany } from "#prisma/authorized";
import { database } from "#prisma/client";
import { failRun, finishRun, latestRun, reportRun, startRun, stopRun, takeUpRun } from "#prisma/plans/runs";
import { savePlan } from "#prisma/plans/save";
import { saveStaging } from "#prisma/stagings/save";
import { newCompany, newSupervisor } from "./support/company";
import { samplePlan } from "./support/plan";
import { serveDatabase, sql } from "./support/serve";
import { sampleStaging } from "./support/staging";

const given = serveDatabase();

let company: AuthorizedCompany;
let user: string;
let planId: string;
beforeAll(async () => {
  company = await newCompany("runners");
  user = await newSupervisor(company, "Wren");
  const saved = await saveStaging(company, user, sampleStaging);
  if (!saved.ok) throw new Error("not saved");
  planId = await savePlan(company, { ...saved.value, user, name: "kept" }, samplePlan);
});

beforeEach(async () => {
  await database().planRun.deleteMany();
  await sql(given.url, "delete from graphile_worker._private_jobs");
});

const jobs = () =>
  sql<{ payload: object; task: string }>(
    given.url,
    "select payload, identifier as task from graphile_worker._private_jobs j join graphile_worker._private_tasks t on t.id = j.task_id",
  );
const start = async (): Promise<string> => {
  const begun = await startRun(company, { productionCode: "reedmere", user, seed: 3, rounds: 50 });
  if (!begun?.started) throw new Error("not started");
  return begun.run.id;
};
const best = samplePlan.measures;

describe("a levelling run", () => {
  it("starts with its job, or not at all", async () => {
    const id = await start();
    expect(await jobs()).toEqual([{ task: "level", payload: { companyId: company, runId: id, productionCode: "reedmere" } }]);
    expect(await latestRun(company, "reedmere")).toMatchObject({ id, state: "queued", rounds: 50, round: 0, progress: null });
    expect(await startRun(company, { productionCode: "nothing", user, seed: 3, rounds: 50 })).toBeNull();
    expect((await jobs()).length).toBe(1);
  });

  it("is the only one of its production, however many ask", async () => {
    const wish = { productionCode: "reedmere", user, seed: 3, rounds: 50 };
    const asked = await Promise.all([startRun(company, wish), startRun(company, wish), startRun(company, wish)]);
    expect(asked.filter((one) => one?.started).length).toBe(1);
    expect(new Set(asked.map((one) => one?.run.id)).size).toBe(1);
    expect((await jobs()).length).toBe(1);
  });

  it("reports how far it is, and ends with its plan", async () => {
    const id = await start();
    expect(await takeUpRun(company, id)).toBe(true);
    expect(await takeUpRun(company, id)).toBe(false);
    expect(await reportRun(company, id, { round: 12, best })).toEqual({ stop: false });
    expect(await latestRun(company, "reedmere")).toMatchObject({ state: "running", round: 12, progress: best });
    expect(await finishRun(company, id, planId)).toBe(true);
    expect(await latestRun(company, "reedmere")).toMatchObject({ state: "finished", planId, error: null });
    expect(await startRun(company, { productionCode: "reedmere", user, seed: 3, rounds: 50 })).toMatchObject({ started: true });
  });

  it("asked to stop learns it at its next report, and keeps its plan", async () => {
    const id = await start();
    await takeUpRun(company, id);
    expect(await stopRun(company, id)).toBe(true);
    expect(await reportRun(company, id, { round: 13, best })).toEqual({ stop: true });
    expect(await finishRun(company, id, planId)).toBe(true);
    expect(await latestRun(company, "reedmere")).toMatchObject({ state: "stopped", planId, round: 13 });
    expect(await stopRun(company, id)).toBe(false);
  });

  it("stopped in the queue is not taken up", async () => {
    const id = await start();
    expect(await stopRun(company, id)).toBe(true);
    expect(await takeUpRun(company, id)).toBe(false);
    expect(await latestRun(company, "reedmere")).toMatchObject({ state: "stopped", planId: null });
  });

  it("that fails says why", async () => {
    const id = await start();
    expect(await failRun(company, id, "The staging has no makers.")).toBe(true);
    expect(await latestRun(company, "reedmere")).toMatchObject({ state: "failed", error: "The staging has no makers." });
  });

  it("whose worker fell silent does not keep the next one from starting", async () => {
    const id = await start();
    await takeUpRun(company, id);
    await database().planRun.update({ where: { id }, data: { reportedAt: new Date(Date.now() - 121_000) } });
    const silent = { state: "failed", error: "The job process fell silent. Level again." };
    expect(await latestRun(company, "reedmere")).toMatchObject({ id, ...silent });
    const next = await start();
    expect(next).not.toBe(id);
    expect(await database().planRun.findUnique({ where: { id } })).toMatchObject(silent);
    expect(await reportRun(company, id, { round: 20, best })).toEqual({ stop: true });
  });

  it("of another company is out of reach", async () => {
    const id = await start();
    const stranger = await newCompany(`strangers ${id}`);
    expect(await stopRun(stranger, id)).toBe(false);
    expect(await latestRun(stranger, "reedmere")).toBeNull();
    expect(await latestRun(company, "reedmere")).toMatchObject({ state: "queued", stopRequested: false });
  });
});
