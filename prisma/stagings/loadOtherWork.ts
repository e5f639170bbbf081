import type { Approval } from "#lib/approvals/approval";
import type { OtherTask } from "#lib/approvals/otherWork";
import type { Skill } from "#lib/labour/skills";
import type { Transaction } from "../client";
import { plainDateOrNull } from "../plainDates";

const byPosition = { orderBy: [{ position: "asc" as const }, { id: "asc" as const }] };
const code = { select: { code: true } } as const;

/** Approvals, and work that no construction lists. */
export async function loadOtherWork(
  tx: Transaction,
  companyId: string,
  productionId: string,
): Promise<{ readonly approvals: readonly Approval[]; readonly otherWork: readonly OtherTask[] }> {
  const where = { companyId, productionId };
  const approvals = await tx.approval.findMany({ where, ...byPosition, include: { set: code, material: code } });
  const tasks = await tx.task.findMany({
    where: { ...where, origin: { not: "operation" } },
    ...byPosition,
    include: { set: code, material: code, due: code, waitsFor: code, prototypeSet: code, shownFor: code },
  });
  return {
    approvals: approvals.map((approval) => ({
      code: approval.code,
      title: approval.title,
      by: approval.by,
      days: approval.days,
      set: approval.set?.code ?? null,
      freeUntil: approval.freeUntil,
      material: approval.material?.code ?? null,
      askedOn: plainDateOrNull(approval.askedOn),
      expectedOn: plainDateOrNull(approval.expectedOn),
      approvedOn: plainDateOrNull(approval.approvedOn),
    })),
    otherWork: tasks.map((task) => ({
      code: task.key,
      origin: task.origin as OtherTask["origin"],
      title: task.name,
      garment: task.garmentNumber,
      set: task.set?.code ?? null,
      material: task.material?.code ?? null,
      gates: task.gates,
      skill: task.skill as Skill,
      minutes: [task.lowMinutes, task.likelyMinutes, task.highMinutes],
      machine: task.machine,
      priority: task.priority,
      due: task.due?.code ?? null,
      waitsFor: task.waitsFor?.code ?? task.prototypeSet?.code ?? null,
      shownFor: task.shownFor?.code ?? null,
      askedBy: task.askedBy,
      askedOn: plainDateOrNull(task.askedOn),
      doneOn: plainDateOrNull(task.doneOn),
    })),
  };
}
