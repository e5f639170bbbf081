import type { Skill } from "#lib/labour/skills";
import type { Bounds, Interval, Measures } from "#lib/levelling/problem";
import type { StoredPlan } from "#lib/planning/storedPlan";
import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";
import type { Prisma } from "../generated/client";

export interface LoadedPlan {
  readonly planId: string;
  /** The production works by it. Otherwise it is the newest what-if of the production. */
  readonly current: boolean;
  readonly name: string;
  readonly createdAt: Date;
  readonly plan: StoredPlan;
}

/** `[from, to, from, to]` as stretches. */
export const inPairs = (turns: readonly number[]): readonly Interval[] =>
  turns.flatMap((start, at) => (at % 2 === 0 ? [{ start, end: turns[at + 1]! }] : []));

const WHOLE = {
  planRows: { orderBy: { position: "asc" }, include: { planRowMakers: { orderBy: { position: "asc" }, include: { maker: true } } } },
  planVisits: { orderBy: { position: "asc" }, include: { fitter: true } },
} as const;

/**
 * The plan of a production: the one it works by, else the newest what-if; null when it was never levelled.
 */
export const loadCurrentPlan = (company: AuthorizedCompany, productionCode: string): Promise<LoadedPlan | null> =>
  loadWhere({ companyId: company, production: { code: productionCode } });

/** One of a production's plans; null when it has none such. */
export const loadPlan = (company: AuthorizedCompany, productionId: string, planId: string): Promise<LoadedPlan | null> =>
  loadWhere({ companyId: company, productionId, id: planId });

async function loadWhere(where: Prisma.PlanWhereInput): Promise<LoadedPlan | null> {
  const row = await database().plan.findFirst({
    where,
    orderBy: [{ current: "desc" }, { createdAt: "desc" }, { id: "desc" }],
    include: WHOLE,
  });
  if (!row) return null;
  const plan: StoredPlan = {
    seed: row.seed,
    rounds: row.rounds,
    schedules: Number(row.schedules),
    rule: row.rule,
    inputRevision: row.inputRevision,
    measures: row.measures as unknown as Measures,
    bounds: row.bounds as unknown as Bounds,
    rows: row.planRows.map((part) => ({
      key: part.key,
      start: part.starts,
      end: part.ends,
      makers: part.planRowMakers.map(({ maker, skill }) => ({ maker: maker.code, skill: skill as Skill })),
      overtime: part.overtime,
      worked: inPairs(part.worked),
      machine: part.machine,
      unplaced: part.reason === null ? null : { reason: part.reason, detail: part.detail ?? "" },
    })),
    visits: row.planVisits.map(({ performer, fitter, room, starts, ends, fittings }) => ({
      performer,
      fitter: fitter.code,
      room,
      start: starts,
      end: ends,
      fittings,
    })),
  };
  return { planId: row.id, current: row.current, name: row.name, createdAt: row.createdAt, plan };
}
