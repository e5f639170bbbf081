import { beforeAll, describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { PlannedTask } from "#lib/planning/stagingPlan";
import type { AuthorizedCompany } from "#prisma/authorized";
import { database } from "#prisma/client";
import type { Hand } from "#prisma/inProduction";
import { loadStaging } from "#prisma/stagings/load";
import { saveStaging } from "#prisma/stagings/save";
import { listMarks, type Marking, markTask } from "#prisma/work/marks";
import { newCompany, newSupervisor } from "./support/company";
import { serveDatabase } from "./support/serve";
import { sampleStaging } from "./support/staging";

serveDatabase();

let company: AuthorizedCompany;
let hand: Hand;
beforeAll(async () => {
  company = await newCompany("workers");
  const user = await newSupervisor(company, "Wren");
  hand = { company, user, production: "reedmere" };
  await saveStaging(company, user, sampleStaging);
});

const task: PlannedTask = {
  ...{ node: 0, key: "RM 001/cut", garments: ["RM 001"], origin: "operation", operation: "cut", name: "Cut", skill: "pattern" },
  ...{ machine: null, minutes: 90, maker: "iri", start: 0, end: 90, stretches: [], overtimeMinutes: 0 },
};
const other: PlannedTask = { ...task, key: "other/trim", origin: "by hand", operation: "trim", garments: [] };
const mark = (of: PlannedTask, to: Marking["to"], more: Partial<Marking> = {}) =>
  markTask(hand, { task: of, maker: "iri", to, said: "", minutes: 0, today: "2027-01-20" as PlainDate, ...more });
const marks = () => listMarks(company, "reedmere");

describe("a mark on a task", () => {
  it("says how far it is and what is in its way, and adds up the minutes worked", async () => {
    expect(await mark(task, "begun", { minutes: 30 })).toBe(true);
    expect((await marks()).get("RM 001/cut")).toEqual({ state: "begun", stuck: "", worked: 30 });
    await mark(task, "stuck", { said: "no elastic" });
    expect((await marks()).get("RM 001/cut")).toEqual({ state: "stuck", stuck: "no elastic", worked: 30 });
    await mark(task, "done", { minutes: 45 });
    expect((await marks()).get("RM 001/cut")).toEqual({ state: "done", stuck: "", worked: 75 });
    expect(await database().auditEntry.findMany({ where: { companyId: company, subject: "Task" }, orderBy: { id: "asc" } })).toMatchObject([
      { action: "task begun", summary: "Iri Maud: Cut, RM 001 (30 minutes)" },
      { action: "task stuck", summary: "Iri Maud: Cut, RM 001 (no elastic)" },
      { action: "task done" },
    ]);
  });

  it("leaves the staging as it is, and stays when files are brought in again", async () => {
    expect((await loadStaging(company, "reedmere"))?.staging).toEqual(sampleStaging);
    await mark(other, "begun");
    await saveStaging(company, null, sampleStaging);
    expect((await marks()).get("RM 001/cut")?.state).toBe("done");
    expect((await marks()).get("trim")?.state).toBe("begun");
    expect((await loadStaging(company, "reedmere"))?.staging).toEqual(sampleStaging);
  });

  it("of work that is not there, by nobody, or from another company changes nothing", async () => {
    expect(await mark({ ...other, operation: "gone" }, "begun")).toBe(false);
    expect(await mark(task, "open", { maker: "nobody" })).toBe(false);
    expect((await marks()).get("RM 001/cut")?.state).toBe("done");
    const stranger = await newCompany("strangers");
    expect((await listMarks(stranger, "reedmere")).size).toBe(0);
    await expect(
      markTask({ ...hand, company: stranger }, { task, maker: "iri", to: "open", said: "", minutes: 0, today: "2027-01-20" as PlainDate }),
    ).rejects.toThrow();
  });
});
