import type { WorkOperation } from "#lib/breakdown/work";
import type { PlainDate } from "#lib/calendar/plainDate";
import { showDay } from "#lib/calendar/showDay";
import type { Skill } from "#lib/labour/skills";
import type { PlannedTask, StagingPlan } from "#lib/planning/stagingPlan";
import { showHours } from "#lib/units/hours";
import type { Minutes } from "#lib/units/quantities";
import { words } from "#lib/words/words";
import type { Answer, Asked } from "./answer";
import { type DaySpan, isWithin, weekFrom } from "./dates";
import type { Options } from "./options";
import { counted, listed, sum } from "./told";

/** Tasks of different designs that could share one set-up. */
export interface Batchable {
  readonly operation: string;
  readonly name: string;
  readonly skill: Skill;
  readonly machine: string | null;
  readonly tasks: readonly string[];
  readonly pieces: readonly string[];
  readonly garments: readonly string[];
  /** All set-ups but the longest: the most that one batch can save. */
  readonly saves: Minutes;
}

export interface BatchesInWeek {
  readonly week: DaySpan;
  /** The greatest saving first. */
  readonly found: readonly Batchable[];
}

/** What begins in a week, allows batching, and is the same operation with the same skill and machine on more than one design. */
export const batchesInWeek = (plan: StagingPlan, today: PlainDate, day: PlainDate): BatchesInWeek => {
  const week = weekFrom(day, today);
  const pieceOf = new Map(plan.garments.map(({ number, piece }) => [number, piece]));
  const operationOf = operations(plan);
  const groups = new Map<string, PlannedTask[]>();
  for (const task of plan.tasks) {
    if (task.start === null || !isWithin(week, task.start) || !operationOf(task)?.batch) continue;
    const key = JSON.stringify([task.operation, task.skill, task.machine]);
    groups.set(key, [...(groups.get(key) ?? []), task]);
  }
  const found = [...groups.values()].flatMap((tasks): Batchable[] => {
    const apart = tasks.filter((one) => !tasks.some((other) => other !== one && waitsOn(plan, one.node, other.node)));
    const garments = apart.flatMap((task) => task.garments);
    const pieces = [...new Set(garments.map((garment) => pieceOf.get(garment)!))];
    if (pieces.length < 2) return [];
    const setups = apart.map((task) => Math.max(...task.garments.map((garment) => operationOf(task, garment)!.setup[1])));
    const saves = sum(setups) - Math.max(...setups);
    const { operation, name, skill, machine } = apart[0]!;
    return saves > 0 ? [{ operation, name, skill, machine, tasks: apart.map(({ key }) => key), pieces, garments, saves }] : [];
  });
  return { week, found: found.sort((a, b) => b.saves - a.saves || (a.operation < b.operation ? -1 : 1)) };
};

const operations = ({ works }: StagingPlan) => {
  const byGarment = new Map(works.map((work) => [work.garment, new Map(work.operations.map((one) => [one.code, one]))]));
  return ({ garments, operation }: PlannedTask, garment = garments[0] ?? ""): WorkOperation | undefined =>
    byGarment.get(garment)?.get(operation);
};

/** Whether one node comes after another, over however many between. */
const waitsOn = ({ problem }: StagingPlan, node: number, earlier: number): boolean => {
  const seen = new Set<number>([node]);
  for (const at of seen) for (const { before, after } of problem.precedences) if (after === at) seen.add(before);
  return seen.has(earlier);
};

export const answerBatchesInWeek = ({ plan, today }: Asked, options: Options): Answer => {
  const data = batchesInWeek(plan, today, options.day("week") ?? today);
  const { skills, trade } = words(plan.staging.production.words);
  const saved = sum(data.found.map(({ saves }) => saves));
  const span = `from ${showDay(data.week.from)} until ${showDay(data.week.to)}`;
  return {
    says: [
      data.found.length === 0
        ? `Nothing that is not batched already: no two designs share an operation ${span}.`
        : `${counted(data.found.length, "operation is", "operations are")} due on more than one design ${span}; worked together they save at most ${showHours(saved)} of set-up.`,
    ],
    tables:
      data.found.length === 0
        ? []
        : [
            {
              title: "Could be worked together",
              headings: ["operation", "skill", "machine", "designs", "garments", "saves at most"],
              rows: data.found.map((one) => [
                one.name,
                skills[one.skill],
                one.machine ?? "",
                one.pieces.join(", "),
                listed(one.garments, 6),
                showHours(one.saves),
              ]),
            },
          ],
    reasons: [
      "Counted: tasks that the plan begins in that week, of an operation that may be batched, with the same skill and machine, on more than one " +
        "line of the piece list, none of which waits for another. Garments of one set are batched in the plan already.",
      `One batch takes the longest set-up once; what differs between the designs (${trade.colour} of thread, cloth) can make the saving smaller.`,
    ],
    data,
  };
};
