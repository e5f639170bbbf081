import { MINUTES_PER_DAY, type WallMinute } from "#lib/calendar/plainDate";
import { addWorkingDays } from "#lib/calendar/workingDays";
import type { LevellingAnswer, LevellingProblem } from "#lib/levelling/problem";
import { toAxis, toWall } from "#lib/planning/axis";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { Minutes } from "#lib/units/quantities";
import type { Asked } from "./answer";
import { axisOf } from "./dates";
import { openDay } from "./openDays";

/** What comes of it when everything still to be done on one garment begins later than planned. */
export interface Slip {
  readonly garment: string;
  readonly finish: WallMinute | null;
  readonly due: WallMinute;
  /** `absorbed`: everybody keeps to the plan and nothing more is late; `by re-planning`: only another plan absorbs it; `moves`: none was found. */
  readonly effect: "absorbed" | "by re-planning" | "moves";
  /** Proved by the bound: no plan at all absorbs it. */
  readonly proved: boolean;
  /** Garments late in the best plan found after it. */
  readonly late: readonly { readonly garment: string; readonly minutes: Minutes }[];
}

/**
 * Each garment with work slipped by so many working days, one at a time: all its tasks and fittings begin at least so much later than
 * planned, and the rest keeps its place where it can. Where that makes more late than was late before, the production is levelled again.
 */
export const slips = (plan: StagingPlan, relevel: Asked["relevel"], days: number): readonly Slip[] =>
  plan.garmentStates
    .filter(({ garment }) => nodesOf(plan, garment).size > 0)
    .map(({ garment, finish, due }) => {
      const problem = slipped(plan, garment, days);
      const before = plan.answer.measures.weightedLateness;
      const kept = relevel(problem, 0);
      if (kept.measures.weightedLateness <= before)
        return { garment, finish, due, effect: "absorbed", proved: false, late: lateIn(plan, kept) };
      const again = relevel(problem, null);
      const effect = again.measures.weightedLateness <= before ? "by re-planning" : "moves";
      return { garment, finish, due, effect, proved: again.bounds.weightedLateness > before, late: lateIn(plan, again) };
    });

/** Tasks and fittings of a garment. */
const nodesOf = ({ tasks, nodes }: StagingPlan, garment: string): ReadonlySet<number> =>
  new Set([
    ...tasks.filter(({ garments }) => garments.includes(garment)).map(({ node }) => node),
    ...nodes.flatMap((node, at) => (node.kind === "fitting" && node.garment === garment ? [at] : [])),
  ]);

/** The plan's problem with the garment's work released later, and the plan to keep to. A batch slips as one. */
const slipped = (plan: StagingPlan, garment: string, days: number): LevellingProblem => {
  const axis = axisOf(plan);
  const isOpen = openDay(plan);
  const later = (minute: number): number => {
    const wall = toWall(axis, minute);
    const day = Math.floor(wall / MINUTES_PER_DAY);
    return toAxis(axis, (addWorkingDays(day, days, isOpen) ?? day + days) * MINUTES_PER_DAY + (wall % MINUTES_PER_DAY));
  };
  const own = nodesOf(plan, garment);
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
