import type { PlainDate } from "#lib/calendar/plainDate";
import type { PlannedTask } from "#lib/planning/stagingPlan";
import type { Minutes } from "#lib/units/quantities";
import type { AuthorizedCompany } from "../authorized";
import { database, type Transaction } from "../client";
import { type Hand, inProduction } from "../inProduction";
import { databaseDate } from "../plainDates";

export type TaskState = "open" | "begun" | "stuck" | "done" | "dropped";

/** How far somebody is with a task. */
export interface TaskMark {
  readonly state: TaskState;
  /** What is in its way; empty when it is not stuck. */
  readonly stuck: string;
  /** Minutes really worked on it so far, whoever worked them. */
  readonly worked: Minutes;
}

/** What a task of the plan is called among the marks: an operation by its key in the plan, other work by its own code. */
export const markedAs = ({ key, origin, operation }: Pick<PlannedTask, "key" | "origin" | "operation">): string =>
  origin === "operation" ? key : operation;

/** Marks by what the task is called; a task nobody has marked has none. */
export async function listMarks(company: AuthorizedCompany, productionCode: string): Promise<ReadonlyMap<string, TaskMark>> {
  const rows = await database().task.findMany({
    where: { companyId: company, production: { code: productionCode } },
    select: { key: true, state: true, stuck: true, workedMinutes: { select: { minutes: true } } },
  });
  return new Map(
    rows.map(({ key, state, stuck, workedMinutes }) => [
      key,
      { state: state as TaskState, stuck, worked: workedMinutes.reduce((sum, { minutes }) => sum + minutes, 0) },
    ]),
  );
}

export interface Marking {
  readonly task: PlannedTask;
  /** Code of whoever works on it. */
  readonly maker: string;
  readonly to: "open" | "begun" | "stuck" | "done";
  /** What is in the way, when it is stuck; a remark otherwise. */
  readonly said: string;
  /** Minutes worked on it today; 0 writes none down. */
  readonly minutes: Minutes;
  readonly today: PlainDate;
}

const WORDS = { open: "put down", begun: "begun", stuck: "stuck", done: "done" } as const;

/**
 * Says how far a task is, and the minutes really worked on it. False when the workroom has no such maker, or the task is other work that is
 * there no more. The day on which other work was done stands in the staging and is an edit.
 */
export const markTask = (hand: Hand, marking: Marking): Promise<boolean> =>
  inProduction(hand, async (tx, { companyId, productionId }) => {
    const { task, maker, to, said, minutes, today } = marking;
    const { workroomId } = await tx.production.findUniqueOrThrow({ where: { id: productionId }, select: { workroomId: true } });
    const person = await tx.maker.findUnique({ where: { companyId_workroomId_code: { companyId, workroomId, code: maker } } });
    const taskId = await taskOf(tx, { companyId, productionId }, task);
    if (!person || taskId === null) return { value: false, did: null };
    await tx.task.update({ where: { id: taskId }, data: { state: to, stuck: to === "stuck" ? said : "", version: { increment: 1 } } });
    const worked = { companyId, taskId, makerId: person.id, date: databaseDate(today), minutes, note: said };
    if (minutes > 0) await tx.workedMinutes.create({ data: worked });
    const about = `${task.name}${task.garments.length > 0 ? `, ${task.garments.join(", ")}` : ""}`;
    const more = [...(minutes > 0 ? [`${minutes} minutes`] : []), ...(said ? [said] : [])].join("; ");
    const detail = `${person.name}: ${about}${more && ` (${more})`}`;
    return { value: true, did: { action: `task ${WORDS[to]}`, detail, subject: { table: "Task", id: taskId } } };
  });

/** The task's row; that of an operation is made at its first mark. */
async function taskOf(tx: Transaction, of: { companyId: string; productionId: string }, task: PlannedTask): Promise<string | null> {
  const key = markedAs(task);
  const there = await tx.task.findUnique({ where: { companyId_productionId_key: { ...of, key } }, select: { id: true } });
  if (there || task.origin !== "operation") return there?.id ?? null;
  const { name, skill, machine, minutes, garments } = task;
  const points = { lowMinutes: minutes, likelyMinutes: minutes, highMinutes: minutes };
  const about = garments.length === 1 ? garments[0]! : null;
  const made = await tx.task.create({
    data: { ...of, ...points, key, origin: "operation", name, skill, machine, garmentNumber: about, state: "open" },
    select: { id: true },
  });
  return made.id;
}
