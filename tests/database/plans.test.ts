import { beforeAll, describe, expect, it } from "vitest";
import { readAudit } from "#prisma/audit";
import type { AuthorizedCompany } from "#prisma/authorized";
import { database } from "#prisma/client";
import { loadCurrentPlan } from "#prisma/plans/load";
import { publishPlan } from "#prisma/plans/publish";
import { type PlanOf, savePlan } from "#prisma/plans/save";
import { saveStaging } from "#prisma/stagings/save";
import { newCompany, newSupervisor } from "./support/company";
import { samplePlan } from "./support/plan";
import { serveDatabase } from "./support/serve";
import { sampleStaging } from "./support/staging";

serveDatabase();

let company: AuthorizedCompany;
let user: string;
let of: PlanOf;
beforeAll(async () => {
  company = await newCompany("planners");
  user = await newSupervisor(company, "Wren");
  const saved = await saveStaging(company, user, sampleStaging);
  if (!saved.ok) throw new Error("not saved");
  of = { workroomId: saved.value.workroomId, productionId: saved.value.productionId, user, name: "first" };
});

const current = async () => (await database().plan.findMany({ where: { companyId: company, current: true } })).map((plan) => plan.id);

describe("a plan", () => {
  it("comes back exactly as it was kept, and is a what-if at first", async () => {
    expect(await loadCurrentPlan(company, "reedmere")).toBeNull();
    const planId = await savePlan(company, of, samplePlan);
    expect(await loadCurrentPlan(company, "reedmere")).toMatchObject({ planId, current: false, name: "first", plan: samplePlan });
  });

  it("published is the workroom's, before any newer what-if", async () => {
    const planId = await savePlan(company, of, { ...samplePlan, seed: 8 });
    expect(await publishPlan(company, user, planId)).toEqual({ ok: true, value: { before: null } });
    await savePlan(company, { ...of, name: "later" }, samplePlan);
    expect(await loadCurrentPlan(company, "reedmere")).toMatchObject({ planId, current: true, plan: { ...samplePlan, seed: 8 } });
  });

  it("published in place of another leaves that one as a what-if, whole", async () => {
    const [before] = await current();
    const planId = await savePlan(company, of, { ...samplePlan, seed: 9 });
    expect(await publishPlan(company, user, planId)).toEqual({ ok: true, value: { before } });
    expect(await current()).toEqual([planId]);
    expect(await database().planRow.count({ where: { companyId: company, planId: before } })).toBe(samplePlan.rows.length);
    expect((await readAudit(company, of.productionId))[0]).toMatchObject({ who: "Wren", action: "plan published" });
  });

  it("published twice stays published", async () => {
    const [planId] = await current();
    expect(await publishPlan(company, user, planId)).toEqual({ ok: true, value: { before: planId } });
    expect(await current()).toEqual([planId]);
  });

  it("published by several at once is one of theirs, alone", async () => {
    const plans = await Promise.all([1, 2, 3, 4].map((seed) => savePlan(company, of, { ...samplePlan, seed })));
    const done = await Promise.all(plans.map((plan) => publishPlan(company, user, plan)));
    expect(done.every((result) => result.ok)).toBe(true);
    const now = await current();
    expect(now.length).toBe(1);
    expect(plans).toContain(now[0]);
  });

  it("of another company cannot be published", async () => {
    const [planId] = await current();
    expect(await publishPlan(await newCompany("rivals"), null, planId)).toEqual({ ok: false, error: "no such plan" });
    expect(await current()).toEqual([planId]);
  });

  it("outlives the makers it names", async () => {
    const without = { ...sampleStaging, makers: sampleStaging.makers.slice(1), absences: [] };
    expect((await saveStaging(company, user, without)).ok).toBe(true);
    expect((await loadCurrentPlan(company, "reedmere"))?.plan.rows).toEqual(samplePlan.rows);
  });
});
