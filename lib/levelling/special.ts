import type { Bounds, Plan } from "./problem";

/** What a method for problems of one shape found. */
export interface Special {
  readonly plan: Plan;
  readonly rounds: number;
  readonly schedules: number;
  readonly rule: string;
  /** What it proved: no plan is less late, none ends before. */
  readonly proved: { readonly weightedLateness: number; readonly finish: number; readonly reason: string };
}

/** The bounds with what was proved besides. */
export function raised(bounds: Bounds, { proved }: Special): Bounds {
  if (proved.weightedLateness <= bounds.weightedLateness && proved.finish <= bounds.finish) return bounds;
  return {
    ...bounds,
    weightedLateness: Math.max(bounds.weightedLateness, proved.weightedLateness),
    finish: Math.max(bounds.finish, proved.finish),
    reasons: [...bounds.reasons, proved.reason],
  };
}
