import type { HandPin } from "#lib/planning/handPins";
import type { StoredPlan } from "#lib/planning/storedPlan";
import { writeAuditIn } from "../audit";
import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";
import { newId } from "../ids";
import { publishPlanIn } from "./publish";
import { type PlanOf, savePlanIn } from "./save";

/** What was fixed by hand in a production, by the order of its keys. */
export async function loadHandPins(company: AuthorizedCompany, productionId: string): Promise<readonly HandPin[]> {
  const rows = await database().handPin.findMany({ where: { companyId: company, productionId }, orderBy: { key: "asc" } });
  return rows.map(({ key, makers, room, starts }) => ({ key, makers, room, start: starts }));
}

/** Keeps a pin and the plan that follows from it, and makes that plan the workroom's: all or nothing. */
export function keepMove(company: AuthorizedCompany, of: PlanOf, pin: HandPin, plan: StoredPlan): Promise<void> {
  const companyId: string = company;
  const { productionId, user, name } = of;
  return database().$transaction(
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
      if (!published.ok) throw new Error(`The plan that follows was not published: ${published.error}. Nothing was kept.`);
    },
    { timeout: 60_000 },
  );
}

/** Frees what was fixed: it stays where it is until the production is levelled again. False: it was not fixed. */
export function letGo(company: AuthorizedCompany, user: string | null, productionId: string, key: string): Promise<boolean> {
  return database().$transaction(async (tx) => {
    const { count } = await tx.handPin.deleteMany({ where: { companyId: company, productionId, key } });
    if (count > 0) await writeAuditIn(tx, company, { user, production: productionId, action: "let go", detail: key });
    return count > 0;
  });
}
