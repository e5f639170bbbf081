import { pino } from "pino";
import { beforeAll, describe, expect, it } from "vitest";
import { checkPlan } from "#lib/levelling/checker/checkPlan";
import { level } from "#lib/levelling/level";
import { prepare } from "#lib/planning/prepare";
import { restorePlan, storePlan } from "#lib/planning/restore";
import { type AuthorizedCompany, authorizeCompany } from "#prisma/authorized";
import { database } from "#prisma/client";
import { loadDemonstration } from "#prisma/demonstration/load";
import { keepMove, loadHandPins } from "#prisma/plans/handPins";
import { loadCurrentPlan } from "#prisma/plans/load";
import { publishPlan } from "#prisma/plans/publish";
import { latestRun, startRun, stopRun } from "#prisma/plans/runs";
import { savePlan } from "#prisma/plans/save";
import { loadTaken } from "#prisma/plans/taken";
import { loadStaging } from "#prisma/stagings/load";
import { saveStaging } from "#prisma/stagings/save";
import { prepareProduction } from "../../app/_data/prepareProduction";
import { todayIn } from "../../app/_data/today";
import { levelProduction } from "../../app/_worker/levelProduction";
import { serveDatabase } from "../database/support/serve";

const given = serveDatabase();
const log = pino({ level: "silent" });
const SECOND = "second-winter";

let company: AuthorizedCompany;
let first: string;
beforeAll(async () => {
  await loadDemonstration(given.url);
  process.env.DATABASE_URL = given.url;
  const production = await database().production.findFirstOrThrow();
  company = authorizeCompany(production.companyId);
  first = production.code;
  const wish = await latestRun(company, first);
  if (!wish || !(await stopRun(company, wish.id))) throw new Error("The demonstration asks for a levelling of its own.");
  const loaded = await loadStaging(company, first);
  const again = { ...loaded!.staging, production: { ...loaded!.staging.production, code: SECOND, title: "Second Winter", prefix: "SW" } };
  const saved = await saveStaging(company, null, again);
  if (!saved.ok) throw new Error(saved.error[0]!.problem);
});

const levelled = async (code: string) => {
  const begun = await startRun(company, { productionCode: code, user: null, seed: 1, rounds: 1 });
  await levelProduction({ companyId: company, runId: begun!.run.id, productionCode: code }, { signal: new AbortController().signal, log });
  const run = await latestRun(company, code);
  expect([run?.state, run?.error]).toEqual(["finished", null]);
};

interface Span {
  readonly of: string;
  readonly start: number;
  readonly end: number;
}

/** Spans of the two plans that lie over each other and are of the same person. */
const twice = (a: readonly Span[], b: readonly Span[]) =>
  a.flatMap((one) =>
    b.filter((other) => one.of === other.of && one.start < other.end && other.start < one.end).map((other) => [one, other]),
  );

const spansOf = async (code: string) => {
  const kept = await loadCurrentPlan(company, code);
  if (!kept?.current) throw new Error(`${code} works by no plan.`);
  const { rows, visits } = kept.plan;
  return {
    makers: rows.flatMap(({ worked, makers }) => makers.flatMap(({ maker }) => worked.map((turn) => ({ of: maker, ...turn })))),
    performers: visits.map(({ performer, start, end }) => ({ of: performer, start, end })),
    // One fitting room, one ruffler, one vat: what is alike only once.
    things: [
      ...visits.map(({ room, start, end }) => ({ of: room, start, end })),
      ...rows.flatMap(({ machine, worked }) =>
        machine === "ruffler" || machine === "dye vat" ? worked.map((turn) => ({ of: machine, ...turn })) : [],
      ),
    ],
  };
};

const nothingTwice = async () => {
  const [one, other] = [await spansOf(first), await spansOf(SECOND)];
  expect(one.makers.length).toBeGreaterThan(50);
  expect(other.makers.length).toBeGreaterThan(50);
  for (const of of ["makers", "performers", "things"] as const) expect(twice(one[of], other[of])).toEqual([]);
};

/** The kept plan, judged beside what the other production has taken. */
const judged = async (code: string) => {
  const [loaded, kept] = await Promise.all([loadStaging(company, code), loadCurrentPlan(company, code)]);
  const { prepared } = await prepareProduction(company, loaded!, todayIn(loaded!.staging.production.zone));
  return checkPlan(prepared.problem, restorePlan(prepared, kept!.plan).plan);
};

describe("two productions of one workroom", () => {
  it("levelled one after the other, each by a plan of its own, book nobody twice", async () => {
    await levelled(first);
    await levelled(SECOND);
    await nothingTwice();
    expect(await judged(first)).toEqual([]);
    expect(await judged(SECOND)).toEqual([]);
  });

  it("levelled the first again keeps clear of the second, which stays as it is", async () => {
    const before = await loadCurrentPlan(company, SECOND);
    await levelled(first);
    expect((await loadCurrentPlan(company, SECOND))?.planId).toBe(before?.planId);
    await nothingTwice();
  });

  it("levelled at the same time, the slower is levelled again beside the faster", async () => {
    await database().plan.updateMany({ where: { companyId: company }, data: { current: false } });
    await Promise.all([levelled(first), levelled(SECOND)]);
    await nothingTwice();
  });

  it("a plan made as if the workroom stood alone is not published beside the other's", async () => {
    const loaded = await loadStaging(company, first);
    const prepared = prepare(loaded!.staging, { today: todayIn(loaded!.staging.production.zone) });
    const answer = level(prepared.problem, { seed: 1, rounds: 0, stop: () => false });
    const { productionId, workroomId, inputRevision } = loaded!;
    const planId = await savePlan(
      company,
      { productionId, workroomId, user: null, name: "alone" },
      storePlan(prepared, answer, inputRevision),
    );
    expect(await publishPlan(company, null, planId)).toEqual({ ok: false, error: "time taken" });
    const pin = { key: prepared.nodes[0]!.key, makers: ["delia"], room: null, start: 30_000_000 };
    const of = { productionId, workroomId, user: null, name: "moved" };
    expect(await keepMove(company, of, pin, storePlan(prepared, answer, inputRevision))).toEqual({ ok: false, error: "time taken" });
    expect(await loadHandPins(company, productionId)).toEqual([]);
    await nothingTwice();
  });

  it("a plan kept before its turns were written down has its makers from beginning to end", async () => {
    const other = await loadCurrentPlan(company, SECOND);
    await database().planRow.updateMany({ where: { companyId: company, planId: other!.planId }, data: { worked: [] } });
    await levelled(first);
    const { makers } = await spansOf(first);
    const whole = other!.plan.rows.flatMap((row) => row.makers.map(({ maker }) => ({ of: maker, start: row.start!, end: row.end! })));
    expect(twice(makers, whole)).toEqual([]);
  });

  it("each is told what the other has taken", async () => {
    const loaded = await loadStaging(company, first);
    const { taken, by } = await loadTaken(company, loaded!);
    expect(by).toEqual(["Second Winter"]);
    expect(taken.makers.length).toBeGreaterThan(50);
  });
});
