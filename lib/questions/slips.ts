import { MINUTES_PER_DAY, type WallMinute } from "#lib/calendar/plainDate";
import { addWorkingDays } from "#lib/calendar/workingDays";
import type { LevellingAnswer, LevellingProblem } from "#lib/levelling/problem";
import { toAxis, toWall } from "#lib/planning/axis";
import { axisOf } from "#lib/planning/axisOf";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { Minutes } from "#lib/units/quantities";
import type { Asked } from "./answer";
import { openDay } from "./openDays";

/** What comes of it when everything still to be done on one garment begins later than planned. */
export interface Slip {
  readonly garment: string;
  readonly finish: WallMinute | null;
  readonly due: WallMinute;
  /**
   * `absorbed`: everybody keeps to the plan where they can, and nothing more is late; `by re-planning`: only another plan absorbs it; `moves`: no
   * such plan was found; `not looked at`: there were enough before it, and it was not looked at alone.
   */
  readonly effect: "absorbed" | "by re-planning" | "moves" | "not looked at";
  /** Proved by the bound: no plan at all absorbs it. */
  readonly proved: boolean;
  /** Garments late in the best plan found after it; empty when it is absorbed. */
  readonly late: readonly { readonly garment: string; readonly minutes: Minutes }[];
}

/**
 * Each garment with work slipped by so many working days, one at a time, those nearest their dates first: all its tasks and fittings begin
 * at least so much later than planned, and the rest keeps its place where it can. Where that makes more late than was late before, the
 * production is levelled again. Ends when so many garments have been found for which that was needed.
 */
export const slips = (
  plan: StagingPlan,
  { relevel, glance }: Pick<Asked, "relevel" | "glance">,
  days: number,
  tries: number,
): readonly Slip[] => {
  const slack = ({ finish, due }: { readonly finish: WallMinute | null; readonly due: WallMinute }) =>
    due - (finish ?? Number.POSITIVE_INFINITY);
  const states = plan.garmentStates.filter(({ garment }) => nodesOf(plan, garment).size > 0).sort((a, b) => slack(a) - slack(b));
  const isNoLater = ({ measures }: LevellingAnswer) => measures.weightedLateness <= plan.answer.measures.weightedLateness;
  const pressing: string[] = [];
  const unlooked = new Set<string>();
  // A plan that absorbs the slips of several garments at once absorbs that of each.
  const look = (garments: readonly string[]): void => {
    if (garments.length === 0) return;
    const problem = slipped(plan, garments, days);
    if (isNoLater(glance(problem)) && isNoLater(relevel(problem, 0))) return;
    const middle = Math.ceil(garments.length / 2);
    if (pressing.length >= tries) for (const garment of garments) unlooked.add(garment);
    else if (garments.length === 1) pressing.push(...garments);
    else for (const half of [garments.slice(0, middle), garments.slice(middle)]) look(half);
  };
  look(states.map(({ garment }) => garment));
  return states.map(({ garment, finish, due }): Slip => {
    if (!pressing.includes(garment))
      return { garment, finish, due, effect: unlooked.has(garment) ? "not looked at" : "absorbed", proved: false, late: [] };
    const problem = slipped(plan, [garment], days);
    const soon = relevel(problem, 1);
    const proved = soon.bounds.weightedLateness > plan.answer.measures.weightedLateness;
    // No search finds what is proved not to be there: one round says about how late it gets.
    const again = proved || isNoLater(soon) ? soon : relevel(problem, null);
    return { garment, finish, due, effect: isNoLater(again) ? "by re-planning" : "moves", proved, late: lateIn(plan, again) };
  });
};

/** Tasks and fittings of a garment. */
const nodesOf = ({ tasks, nodes }: StagingPlan, garment: string): ReadonlySet<number> =>
  new Set([
    ...tasks.filter(({ garments }) => garments.includes(garment)).map(({ node }) => node),
    ...nodes.flatMap((node, at) => (node.kind === "fitting" && node.garment === garment ? [at] : [])),
  ]);

/** The plan's problem with the garments' work released later, and the plan to keep to. A batch slips as one. */
const slipped = (plan: StagingPlan, garments: readonly string[], days: number): LevellingProblem => {
  const axis = axisOf(plan);
  const isOpen = openDay(plan);
  const later = (minute: number): number => {
    const wall = toWall(axis, minute);
    const day = Math.floor(wall / MINUTES_PER_DAY);
    return toAxis(axis, (addWorkingDays(day, days, isOpen) ?? day + days) * MINUTES_PER_DAY + (wall % MINUTES_PER_DAY));
  };
  const own = new Set(garments.flatMap((garment) => [...nodesOf(plan, garment)]));
  const nodes = plan.problem.nodes.map((node, at) => {
    const placed = plan.answer.plan.placed[at];
    return placed && own.has(at) ? { ...node, release: Math.max(node.release, later(placed.start)) } : node;
  });
  return { ...plan.problem, nodes, current: plan.answer.plan };
};

const lateIn = ({ problem, nodes }: StagingPlan, { late }: LevellingAnswer): Slip["late"] =>
  late.flatMap(({ due, minutesLate }) => {
    const node = nodes[problem.dues[due]!.node]!;
    return node.kind === "finished" && minutesLate > 0 ? [{ garment: node.garment, minutes: minutesLate }] : [];
  });
