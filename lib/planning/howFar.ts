import type { WallMinute } from "#lib/calendar/plainDate";
import type { StagingPlan } from "./stagingPlan";

/** How far a garment is, in the order it gets there. */
export const STAGES = ["not begun", "being made", "fitted", "done", "no place"] as const;
export type Stage = (typeof STAGES)[number];

/**
 * How far the plan has each garment at a moment: begun once its first task or fitting has begun, fitted once its last fitting is over and
 * there is work left, done once all is. One with nothing to do is done. A garment with work that has no place counts by itself.
 */
export const howFar = (plan: Pick<StagingPlan, "garments" | "tasks" | "fittings">, now: WallMinute): ReadonlyMap<string, Stage> => {
  interface Spans {
    placed: boolean;
    first: number;
    last: number;
    lastFitting: number;
  }
  const spans = new Map<string, Spans>(
    plan.garments.map(({ number }) => [number, { placed: true, first: Infinity, last: -Infinity, lastFitting: -Infinity }]),
  );
  const add = (garment: string, { start, end }: { readonly start: number | null; readonly end: number | null }, fitting: boolean) => {
    const of = spans.get(garment);
    if (!of) return;
    if (start === null || end === null) of.placed = false;
    else {
      of.first = Math.min(of.first, start);
      of.last = Math.max(of.last, end);
      if (fitting) of.lastFitting = Math.max(of.lastFitting, end);
    }
  };
  for (const task of plan.tasks) for (const garment of task.garments) add(garment, task, false);
  for (const fitting of plan.fittings) add(fitting.garment, fitting, true);
  return new Map([...spans].map(([garment, of]) => [garment, stageOf(of, now)]));
};

const stageOf = (
  of: { readonly placed: boolean; readonly first: number; readonly last: number; readonly lastFitting: number },
  now: WallMinute,
): Stage => {
  if (!of.placed) return "no place";
  if (of.last <= now) return "done";
  if (of.first > now) return "not begun";
  return of.lastFitting > -Infinity && of.lastFitting <= now ? "fitted" : "being made";
};
