import type { PlainDate, WallMinute } from "#lib/calendar/plainDate";
import type { Prepared } from "#lib/planning/prepared";
import type { PlannedTask, StagingPlan } from "#lib/planning/stagingPlan";

/** What must be there before a fitting can be held, and is not yet. */
export interface Missing {
  /** Work it waits for directly that ends after now, with the end the plan gives it; null: no place in the plan. */
  readonly work: readonly { readonly name: string; readonly end: WallMinute | null }[];
  /** Goods of any work before it, with the day they are there. */
  readonly goods: readonly { readonly text: string; readonly day: PlainDate }[];
}

/** Finds what each fitting of a plan, by its node, still waits for; work that somebody has said is done is not missing. */
export const missingFor = (
  { deliveries }: Pick<Prepared, "deliveries">,
  { problem, tasks }: Pick<StagingPlan, "problem" | "tasks">,
  now: WallMinute,
  isDone: (task: PlannedTask) => boolean = () => false,
): ((node: number) => Missing) => {
  const before = new Map<number, number[]>();
  for (const wait of problem.precedences) before.set(wait.after, [...(before.get(wait.after) ?? []), wait.before]);
  const taskAt = new Map<number, PlannedTask>(tasks.map((task) => [task.node, task]));
  return (node) => {
    const all = everythingBefore(node, before);
    // A batch asks for the same goods at several of its tasks: the last day counts.
    const goods = new Map<string, PlainDate>();
    for (const { node: at, text, day } of deliveries) if (all.has(at) && (goods.get(text) ?? "") < day) goods.set(text, day);
    return {
      work: (before.get(node) ?? []).flatMap((one) => {
        const task = taskAt.get(one);
        return task && !isDone(task) && (task.end === null || task.end > now) ? [{ name: task.name, end: task.end }] : [];
      }),
      goods: [...goods].map(([text, day]) => ({ text, day })),
    };
  };
};

const everythingBefore = (node: number, before: ReadonlyMap<number, readonly number[]>): ReadonlySet<number> => {
  const seen = new Set<number>();
  const waiting = [...(before.get(node) ?? [])];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (seen.has(next)) continue;
    seen.add(next);
    waiting.push(...(before.get(next) ?? []));
  }
  return seen;
};
