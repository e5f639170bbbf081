import type { Staging } from "#lib/staging/staging";
import { upsertRows } from "../bulk";
import { type Ids, needOrNull } from "../ids";
import { idsByCode, type Saving } from "./saving";

export interface OtherWorkNeeds {
  readonly materials: Ids;
  readonly milestones: Ids;
  readonly sets: Ids;
}

/** Approvals, and work that no construction lists. */
export async function saveOtherWork({ tx, companyId, productionId }: Saving, staging: Staging, needs: OtherWorkNeeds): Promise<void> {
  const where = { companyId, productionId };
  await upsertRows(
    tx,
    "Approval",
    ["productionId", "code"],
    staging.approvals.map(({ set, material, ...approval }, position) => ({
      ...where,
      ...approval,
      setId: needOrNull(needs.sets, set),
      materialId: needOrNull(needs.materials, material),
      position,
      version: 1,
    })),
  );
  const approvals = idsByCode(await tx.approval.findMany({ where, select: { id: true, code: true } }));
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
      setId: needOrNull(needs.sets, set),
      materialId: needOrNull(needs.materials, material),
      dueId: needOrNull(needs.milestones, due),
      waitsForId: waitsFor !== null && own.has(waitsFor) ? needOrNull(approvals, waitsFor) : null,
      prototypeSetId: waitsFor !== null && !own.has(waitsFor) ? needOrNull(needs.sets, waitsFor) : null,
      shownForId: needOrNull(approvals, shownFor),
      lowMinutes: minutes[0],
      likelyMinutes: minutes[1],
      highMinutes: minutes[2],
      state: task.doneOn === null ? "open" : "done",
      position,
      version: 1,
    })),
  );
  const codes = staging.otherWork.map(({ code }) => code);
  await tx.task.deleteMany({ where: { ...where, origin: { not: "operation" }, key: { notIn: codes } } });
  await tx.approval.deleteMany({ where: { ...where, code: { notIn: [...own] } } });
}
