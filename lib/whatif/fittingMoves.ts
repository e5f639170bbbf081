import type { WallMinute } from "#lib/calendar/plainDate";
import type { Call } from "#lib/casting/casting";
import { freeTime } from "#lib/fittings/freeTime";
import type { FittingRules } from "#lib/fittings/rules";
import type { PlannedFitting } from "#lib/planning/stagingPlan";
import type { Minutes } from "#lib/units/quantities";
import type { RecastFitting } from "./castingEffect";

/** A fitting that a change of casting touches, and what becomes of its appointment. */
export interface FittingMove extends RecastFitting {
  /** When it stands in the plan; null when it has no appointment. */
  readonly at: WallMinute | null;
  /** Whether who is fitted now is free then; null when there is no appointment, or nobody to be fitted. */
  readonly keepsTime: boolean | null;
  /** The first time from then (or from `from`) on at which who is fitted now is free for so long; null when never, or there is nobody. */
  readonly next: WallMinute | null;
}

/** Appointments of the plan against the free time of those who are fitted instead; nothing before `from` is offered. */
export const fittingMoves = (
  changes: readonly RecastFitting[],
  planned: readonly PlannedFitting[],
  calls: readonly Call[],
  rules: FittingRules,
  from: WallMinute,
): readonly FittingMove[] => {
  const known = new Map<string, ReturnType<typeof freeTime>>();
  const freeOf = (performer: string) => {
    const free = known.get(performer) ?? freeTime(performer, calls, rules);
    known.set(performer, free);
    return free;
  };
  return changes.map((change): FittingMove => {
    const had = planned.find(
      (one) => one.garment === change.numberBefore && one.name === change.name && one.performer === change.before && one.start !== null,
    );
    const at = had?.start ?? null;
    if (change.after === null) return { ...change, at, keepsTime: null, next: null };
    const free = freeOf(change.after);
    const keepsTime = at === null ? null : free.some((one) => one.start <= at && at + change.minutesAfter <= one.end);
    return { ...change, at, keepsTime, next: keepsTime ? at : firstFree(free, change.minutesAfter, Math.max(from, at ?? from)) };
  });
};

const firstFree = (free: ReturnType<typeof freeTime>, minutes: Minutes, from: WallMinute): WallMinute | null => {
  const found = free.find(({ start, end }) => Math.max(start, from) + minutes <= end);
  return found ? Math.max(found.start, from) : null;
};
