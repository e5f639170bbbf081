import { addDays, dayNumber } from "#lib/calendar/days";
import { MINUTES_PER_DAY, type PlainDate, type WallMinute } from "#lib/calendar/plainDate";
import { minutesWithin } from "#lib/labour/intervals";
import type { Interval } from "#lib/levelling/problem";
import { toAxis, toWall } from "#lib/planning/axis";
import { axisOf } from "#lib/planning/axisOf";
import type { PlannedTask, StagingPlan } from "#lib/planning/stagingPlan";
import { isWithin } from "./dates";
import { openHours } from "./openDays";

export interface WorkItem {
  readonly start: WallMinute;
  readonly end: WallMinute;
  /** Node of the plan: a task or a fitting she attends. */
  readonly node: number;
}

export interface PersonsDay {
  readonly maker: string;
  readonly items: readonly WorkItem[];
  /** What can be begun in place of the day's first task; null when nothing can. `of` is who has it in the plan. */
  readonly instead: { readonly node: number; readonly of: string } | null;
}

/** What each person works on, on a day, and what can be begun when the first of it stalls: what is next in her own list, else in another's. */
export const workOfDay = (plan: StagingPlan, day: PlainDate): readonly PersonsDay[] => {
  const span = { from: day, to: addDays(day, 1) };
  const isReady = readiness(plan);
  return plan.problem.makers.map(({ id, pace }) => {
    const tasks = plan.tasks
      .filter(({ maker }) => maker === id)
      .flatMap(({ node, stretches }) => stretches.map((stretch) => ({ ...stretch, node })));
    const fittings = plan.fittings.flatMap((one) =>
      one.fitter === id && one.start !== null ? [{ start: one.start, end: one.end!, node: one.node }] : [],
    );
    const items = [...tasks, ...fittings].filter(({ start }) => isWithin(span, start)).sort((a, b) => a.start - b.start);
    const first = items.find(({ node }) => plan.nodes[node]!.kind !== "fitting");
    if (!first) return { maker: id, items, instead: null };
    const can = ({ node, skill, start }: PlannedTask) =>
      node !== first.node &&
      start !== null &&
      start > first.start &&
      (pace[plan.problem.skills.indexOf(skill)] ?? 0) > 0 &&
      isReady(node, first.start);
    const [next] = plan.tasks
      .filter(can)
      .sort((a, b) => Number(a.maker !== id) - Number(b.maker !== id) || a.start! - b.start! || a.node - b.node);
    return { maker: id, items, instead: next ? { node: next.node, of: next.maker! } : null };
  });
};

/** Whether all that a node waits for is done, and its goods are there, at a time of the plan. */
const readiness = (plan: StagingPlan) => {
  const axis = axisOf(plan);
  const open = openHours(plan);
  const wall = ({ start, end }: Interval): Interval => ({ start: toWall(axis, start), end: toWall(axis, end) });
  return (node: number, time: WallMinute): boolean => {
    const now = toAxis(axis, time);
    if (plan.problem.nodes[node]!.release > now) return false;
    return plan.problem.precedences
      .filter(({ after }) => after === node)
      .every(({ before, lag, lagKind }) => {
        const done = plan.answer.plan.placed[before]?.end;
        if (done === undefined || done > now) return false;
        return (lagKind === "elapsed" ? now - done : minutesWithin(wall({ start: done, end: now }), open)) >= lag;
      });
  };
};

/** Minutes of the day, for showing. */
export const clockOf = (wall: WallMinute, day: PlainDate): number => wall - dayNumber(day) * MINUTES_PER_DAY;
