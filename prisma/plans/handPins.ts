import type { HandPin } from "#lib/planning/handPins";
import type { StoredPlan } from "#lib/planning/storedPlan";
import { failed, ok, type Result } from "#lib/result";
import { writeAuditIn } from "../audit";
import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";
import { newId } from "../ids";
import { type NotPublished, publishPlanIn } from "./publish";
import { type PlanOf, savePlanIn } from "./save";

/** What was fixed by hand in a production, by the order of its keys. */
export async function loadHandPins(company: AuthorizedCompany, productionId: string): Promise<readonly HandPin[]> {
  const rows = await database().handPin.findMany({ where: { companyId: company, productionId }, orderBy: { key: "asc" } });
  return rows.map(({ key, makers, room, starts }) => ({ key, makers, room, start: starts }));
}

/** Why the plan that follows from a pin is not published: nothing is kept then. */
class NotKept extends Error {
  constructor(readonly why: NotPublished) {
    super(why);
  }
}

/** Keeps a pin and the plan that follows from it, and makes that plan the production's: all or nothing. */
export async function keepMove(
  company: AuthorizedCompany,
  of: PlanOf,
  pin: HandPin,
  plan: StoredPlan,
): Promise<Result<null, NotPublished>> {
  const companyId: string = company;
  const { productionId, user, name } = of;
  try {
    await database().$transaction(
      async (tx) => {
        const { key, makers, room, start: starts } = pin;
        const placed = { makers: [...makers], room, starts, byId: user };
        await tx.handPin.upsert({
          where: { companyId_productionId_key: { companyId, productionId, key } },
          create: { id: newId(), companyId, productionId, key, ...placed },
          update: placed,
        });
        await writeAuditIn(tx, companyId, {
          user,
          production: productionId,
          action: "moved by hand",
          detail: name,
          after: { ...placed, key },
        });
        const published = await publishPlanIn(tx, company, user, await savePlanIn(tx, company, of, plan));
        if (!published.ok) throw new NotKept(published.error);
      },
      { timeout: 60_000 },
    );
    return ok(null);
  } catch (error) {
    if (error instanceof NotKept) return failed(error.why);
    throw error;
  }
}

/** Frees what was fixed: it stays where it is until the production is levelled again. False: it was not fixed. */
export function letGo(company: AuthorizedCompany, user: string | null, productionId: string, key: string): Promise<boolean> {
  return database().$transaction(async (tx) => {
    const { count } = await tx.handPin.deleteMany({ where: { companyId: company, productionId, key } });
    if (count > 0) await writeAuditIn(tx, company, { user, production: productionId, action: "let go", detail: key });
    return count > 0;
  });
}
