import { failed, ok, type Result } from "#lib/result";
import { writeAuditIn } from "../audit";
import type { AuthorizedCompany } from "../authorized";
import { database, type Transaction } from "../client";
import { isTaken } from "./taken";

export interface Published {
  /** The plan the production worked by until now; null for the first. */
  readonly before: string | null;
}

/** `time taken`: the current plan of another production has a maker or a performer at a time of this one. */
export type NotPublished = "no such plan" | "time taken";

/**
 * Makes a plan the one its production works by. Only the pointer moves: the plan before it stays as a what-if. Two at once are
 * taken one after the other, and the later stands. The productions of a workroom are taken one after the other too: none is given a plan that
 * books somebody whom another has.
 */
export const publishPlan = (company: AuthorizedCompany, user: string | null, planId: string): Promise<Result<Published, NotPublished>> =>
  database().$transaction((tx) => publishPlanIn(tx, company, user, planId));

/** The same inside a transaction that does more. */
export async function publishPlanIn(
  tx: Transaction,
  company: AuthorizedCompany,
  user: string | null,
  planId: string,
): Promise<Result<Published, NotPublished>> {
  const companyId: string = company;
  const plan = await tx.plan.findUnique({ where: { companyId_id: { companyId, id: planId } } });
  if (!plan) return failed("no such plan");
  const { workroomId, productionId } = plan;
  await tx.$queryRaw`select id from workroom where company_id = ${companyId}::uuid and id = ${workroomId}::uuid for update`;
  const before = await tx.plan.findFirst({ where: { companyId, productionId, current: true }, select: { id: true } });
  if (before?.id === planId) return ok({ before: planId });
  if (await isTaken(tx, companyId, planId)) return failed("time taken");
  await tx.plan.updateMany({ where: { companyId, productionId, current: true }, data: { current: false } });
  await tx.plan.update({ where: { id: planId }, data: { current: true, publishedAt: new Date() } });
  await writeAuditIn(tx, companyId, {
    user,
    production: productionId,
    action: "plan published",
    subject: { table: "plan", id: planId },
    detail: plan.name,
    ...(before && { before: { plan: before.id } }),
    after: { plan: planId },
  });
  return ok({ before: before?.id ?? null });
}
