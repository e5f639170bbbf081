import type { Need } from "#lib/breakdown/work";
import { plainDate } from "#lib/calendar/days";
import { MINUTES_PER_DAY, type PlainDate } from "#lib/calendar/plainDate";
import type { PlannedTask } from "./stagingPlan";

/** First day of the operation that needs it; null when the plan has no place for that. */
export const cutDays = (tasks: readonly Pick<PlannedTask, "garments" | "operation" | "origin" | "start">[]) => {
  const days = new Map<string, PlainDate>();
  for (const { garments, operation, origin, start } of tasks) {
    if (origin !== "operation" || start === null) continue;
    const day = plainDate(Math.floor(start / MINUTES_PER_DAY));
    for (const garment of garments) days.set(JSON.stringify([garment, operation]), day);
  }
  return ({ garment, operation }: Need): PlainDate | null => days.get(JSON.stringify([garment, operation])) ?? null;
};
