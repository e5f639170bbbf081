import type { StoredPlan } from "#lib/planning/storedPlan";
import type { AuthorizedCompany } from "../authorized";
import { insertRows } from "../bulk";
import { database, type Transaction } from "../client";
import { type Ids, need, newId } from "../ids";
import { idsByCode } from "../stagings/saving";

export interface PlanOf {
  readonly workroomId: string;
  readonly productionId: string;
  /** Who asked for it; null for the command line. */
  readonly user: string | null;
  readonly name: string;
}

/** Keeps a plan as a what-if and returns its id: publishing it is another step. */
export const savePlan = (company: AuthorizedCompany, of: PlanOf, plan: StoredPlan): Promise<string> =>
  database().$transaction((tx) => savePlanIn(tx, company, of, plan), { timeout: 60_000 });

/** The same inside a transaction that does more. */
export async function savePlanIn(tx: Transaction, company: AuthorizedCompany, of: PlanOf, plan: StoredPlan): Promise<string> {
  const companyId: string = company;
  const planId = newId();
  const { seed, rounds, schedules, rule, inputRevision, measures, bounds } = plan;
  const { workroomId, productionId, user: madeById, name } = of;
  await insertRows(tx, "Plan", [
    {
      ...{ id: planId, companyId, workroomId, productionId, madeById, name },
      ...{ current: false, seed, rounds, schedules, rule, inputRevision },
      ...{
        measures: JSON.parse(JSON.stringify(measures)),
        bounds: JSON.parse(JSON.stringify(bounds)),
        createdAt: new Date().toISOString(),
      },
    },
  ]);
  const makers = idsByCode(await tx.maker.findMany({ where: { companyId, workroomId }, select: { id: true, code: true } }));
  const { rows, makersOfRows } = planRows(companyId, planId, plan, makers);
  await insertRows(tx, "PlanRow", rows);
  await insertRows(tx, "PlanRowMaker", makersOfRows);
  await insertRows(
    tx,
    "PlanVisit",
    plan.visits.map(({ performer, fitter, room, start, end, fittings }, position) => ({
      ...{ companyId, planId, performer, fitterId: need(makers, fitter), room, starts: start, ends: end },
      fittings: [...fittings],
      position,
    })),
  );
  return planId;
}

function planRows(companyId: string, planId: string, plan: StoredPlan, makers: Ids) {
  const rows = plan.rows.map(({ key, start, end, overtime, worked, machine, unplaced }, position) => ({
    ...{
      id: newId(),
      companyId,
      planId,
      key,
      starts: start,
      ends: end,
      overtime,
      machine,
      worked: worked.flatMap((span) => [span.start, span.end]),
    },
    ...{ reason: unplaced?.reason ?? null, detail: unplaced?.detail ?? null, position },
  }));
  const makersOfRows = plan.rows.flatMap((row, at) =>
    row.makers.map(({ maker, skill }, position) => ({ companyId, rowId: rows[at].id, makerId: need(makers, maker), skill, position })),
  );
  return { rows, makersOfRows };
}
