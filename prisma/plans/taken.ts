import type { Taken, TakenSpan } from "#lib/planning/taken";
import type { AuthorizedCompany } from "../authorized";
import { database, type Transaction } from "../client";
import { inPairs } from "./load";

/** What has been taken, and by which plans: as long as these are current, nothing of it changes. */
export interface LoadedTaken {
  readonly taken: Taken;
  /** Titles of the productions that share the workroom and have a plan. */
  readonly by: readonly string[];
}

/** What the current plans of the other productions take: makers, rooms and machines of the same workroom, and performers wherever they are fitted. */
export async function loadTaken(
  company: AuthorizedCompany,
  { productionId, workroomId }: { readonly productionId: string; readonly workroomId: string },
): Promise<LoadedTaken> {
  const companyId: string = company;
  const others = await database().plan.findMany({
    where: { companyId, current: true, productionId: { not: productionId } },
    select: { id: true, workroomId: true, production: { select: { title: true, code: true } } },
    orderBy: { id: "asc" },
  });
  const title = new Map(others.map(({ id, production }) => [id, production.title]));
  const here = others.filter((plan) => plan.workroomId === workroomId);
  const ofPlans = (plans: readonly { readonly id: string }[]) => ({ companyId, planId: { in: plans.map(({ id }) => id) } });
  const rows = await database().planRow.findMany({
    where: { ...ofPlans(here), starts: { not: null } },
    select: {
      planId: true,
      starts: true,
      ends: true,
      worked: true,
      machine: true,
      planRowMakers: { select: { maker: { select: { code: true } } } },
    },
  });
  const visits = await database().planVisit.findMany({
    where: ofPlans(others),
    select: { planId: true, performer: true, room: true, starts: true, ends: true },
  });
  interface Placed {
    readonly planId: string;
    readonly starts: number | null;
    readonly ends: number | null;
  }
  const by = ({ planId }: Placed): string => title.get(planId) ?? "";
  const span = (of: string, row: Placed): TakenSpan => ({ of, start: row.starts ?? 0, end: row.ends ?? 0, by: by(row) });
  const isHere = new Set(here.map(({ id }) => id));
  return {
    taken: {
      makers: rows.flatMap((row) =>
        row.planRowMakers.flatMap(({ maker }) => turnsOf(row).map((turn) => ({ of: maker.code, ...turn, by: by(row) }))),
      ),
      machines: rows.flatMap((row) => (row.machine === null ? [] : [span(row.machine, row)])),
      rooms: visits.filter(({ planId }) => isHere.has(planId)).map((visit) => span(visit.room, visit)),
      performers: visits.map((visit) => span(visit.performer, visit)),
    },
    by: [...new Set(here.map(({ production }) => production.title))].sort(),
  };
}

/** A plan kept before its turns were written down has its makers from beginning to end. */
const turnsOf = ({
  worked,
  starts,
  ends,
}: {
  readonly worked: readonly number[];
  readonly starts: number | null;
  readonly ends: number | null;
}) => inPairs(worked.length > 0 ? worked : [starts ?? 0, ends ?? 0]);

/**
 * Whether a plan asks for a maker of its workroom, or a performer, at a time that the current plan of another production has. Inside a transaction
 * that holds the workroom: what it says then stays so.
 */
export async function isTaken(tx: Transaction, companyId: string, planId: string): Promise<boolean> {
  const [found] = await tx.$queryRaw<{ twice: boolean }[]>`
    with plans as (
      select mine.id as mine, other.id as other from plan mine
      join plan other on other.company_id = mine.company_id and other.current and other.production_id <> mine.production_id
      where mine.company_id = ${companyId}::uuid and mine.id = ${planId}::uuid
    ), turns as (
      select r.plan_id, m.maker_id, turns[at] as starts, turns[at + 1] as ends
      from (select plan_row.*, case when cardinality(worked) > 0 then worked else array[starts, ends] end as turns from plan_row) r
      join plan_row_maker m on m.company_id = r.company_id and m.row_id = r.id,
      lateral generate_series(1, cardinality(turns), 2) at
      where r.company_id = ${companyId}::uuid and r.plan_id in (select mine from plans union select other from plans)
    )
    select exists (
      select 1 from plans
      join turns own on own.plan_id = mine
      join turns theirs on theirs.plan_id = other and theirs.maker_id = own.maker_id
      where theirs.starts < own.ends and own.starts < theirs.ends
    ) or exists (
      select 1 from plans
      join plan_visit own on own.company_id = ${companyId}::uuid and own.plan_id = mine
      join plan_visit theirs on theirs.company_id = own.company_id and theirs.plan_id = other and theirs.performer = own.performer
      where theirs.starts < own.ends and own.starts < theirs.ends
    ) as twice`;
  return found?.twice === true;
}
