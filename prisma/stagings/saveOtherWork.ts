import type { Staging } from "#lib/staging/staging";
import { upsertRows } from "../bulk";
import { needOrNull } from "../ids";
import { idsOf, type Saving } from "./saving";

/** Approvals, and work that no construction lists. */
export async function saveOtherWork(saving: Saving, staging: Staging): Promise<void> {
  const { tx, companyId, productionId } = saving;
  const [sets, materials, milestones] = [
    await idsOf(saving, "garmentSet"),
    await idsOf(saving, "material"),
    await idsOf(saving, "milestone"),
  ];
  const where = { companyId, productionId };
  await upsertRows(
    tx,
    "Approval",
    ["productionId", "code"],
    staging.approvals.map(({ set, material, ...approval }, position) => ({
      ...where,
      ...approval,
      setId: needOrNull(sets, set),
      materialId: needOrNull(materials, material),
      position,
      version: 1,
    })),
  );
  const approvals = await idsOf(saving, "approval");
  const own = new Set(staging.approvals.map(({ code }) => code));
  await upsertRows(
    tx,
    "Task",
    ["productionId", "key"],
    staging.otherWork.map(({ code, title, garment, set, material, minutes, due, waitsFor, shownFor, ...task }, position) => ({
      ...where,
      ...task,
      key: code,
      name: title,
      garmentNumber: garment,
      setId: needOrNull(sets, set),
      materialId: needOrNull(materials, material),
      dueId: needOrNull(milestones, due),
      waitsForId: waitsFor !== null && own.has(waitsFor) ? needOrNull(approvals, waitsFor) : null,
      prototypeSetId: waitsFor !== null && !own.has(waitsFor) ? needOrNull(sets, waitsFor) : null,
      shownForId: needOrNull(approvals, shownFor),
      lowMinutes: minutes[0],
      likelyMinutes: minutes[1],
      highMinutes: minutes[2],
      state: task.doneOn === null ? "open" : "done",
      position,
      version: 1,
    })),
    ["state"],
  );
  // What was begun or is stuck stays so; the day it was done says the rest.
  await tx.$executeRaw`
    update task set state = case when done_on is null then 'open' else 'done' end, stuck = ''
    where company_id = ${companyId}::uuid and production_id = ${productionId}::uuid and origin <> 'operation'
      and ((done_on is not null and state <> 'done') or (done_on is null and state = 'done'))`;
  const codes = staging.otherWork.map(({ code }) => code);
  await tx.task.deleteMany({ where: { ...where, origin: { not: "operation" }, key: { notIn: codes } } });
  await tx.approval.deleteMany({ where: { ...where, code: { notIn: [...own] } } });
}
