import type { WallMinute } from "#lib/calendar/plainDate";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { Minutes } from "#lib/units/quantities";
import { type OtherTask, openTasks } from "./otherWork";

/** Work somebody asked for that is not done. */
export interface Undone {
  readonly task: OtherTask;
  /** Who does it and when, by the plan; null when it has no place. */
  readonly maker: string | null;
  readonly start: WallMinute | null;
  readonly end: WallMinute | null;
}

/** Notes from the dress parade that are undone (or all other work when asked), the first priority first, then in the order of the plan. */
export const undoneNotes = ({ staging, tasks }: StagingPlan, origins: readonly OtherTask["origin"][] = ["parade note"]): Undone[] => {
  const planned = new Map(tasks.filter(({ origin }) => origin !== "operation").map((task) => [task.operation, task]));
  return openTasks(staging.otherWork)
    .filter(({ origin }) => origins.includes(origin))
    .map((task) => {
      const { maker = null, start = null, end = null } = planned.get(task.code) ?? {};
      return { task, maker, start, end };
    })
    .sort((a, b) => a.task.priority - b.task.priority || (a.start ?? Number.POSITIVE_INFINITY) - (b.start ?? Number.POSITIVE_INFINITY));
};

/** Likely minutes of undone notes by priority, the first first. */
export const minutesByPriority = (
  undone: readonly Undone[],
): readonly { readonly priority: number; readonly notes: number; readonly minutes: Minutes }[] =>
  [...new Set(undone.map(({ task }) => task.priority))].map((priority) => {
    const own = undone.filter(({ task }) => task.priority === priority);
    return { priority, notes: own.length, minutes: own.reduce((sum, { task }) => sum + task.minutes[1], 0) };
  });
