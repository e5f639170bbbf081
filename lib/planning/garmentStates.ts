import { dayNumber } from "#lib/calendar/days";
import { MINUTES_PER_DAY } from "#lib/calendar/plainDate";
import { workingDaysAfter } from "#lib/calendar/workingDays";
import type { LevellingAnswer } from "#lib/levelling/problem";
import type { Minutes } from "#lib/units/quantities";
import { openDays } from "./answers";
import { toWall } from "./axis";
import { workMinutes } from "./outwork";
import type { Prepared } from "./prepared";
import type { GarmentState, PlanNode } from "./stagingPlan";
import type { Lateness } from "./why";

/** How each garment stands in the plan, in the order of the piece list. One without work has no finish and is never late. */
export const garmentStates = (prepared: Prepared, answer: LevellingAnswer, late: ReadonlyMap<string, Lateness>): GarmentState[] => {
  const { garments, staging, problem, nodes, axis } = prepared;
  const isOpen = openDays(staging, { from: prepared.dayZero, to: Math.ceil(toWall(axis, problem.horizon) / MINUTES_PER_DAY) });
  const minutes = minutesByGarment(prepared);
  const finished = new Map(nodes.flatMap((node, at) => (node.kind === "finished" ? [[node.garment, at] as const] : [])));
  return garments.map(({ number, due }) => {
    const node = finished.get(number);
    const milestone = staging.milestones.find(({ code }) => code === due)!;
    const dueWall = dayNumber(milestone.date) * MINUTES_PER_DAY + milestone.at;
    const placed = node === undefined ? null : (answer.plan.placed[node] ?? null);
    const finish = placed && toWall(axis, placed.end);
    const dueAt = problem.dues.findIndex((one) => one.node === node);
    const why = late.get(number);
    return {
      garment: number,
      minutes: minutes.get(number) ?? 0,
      finish,
      due: dueWall,
      minutesLate: placed ? Math.max(0, placed.end - problem.dues[dueAt]!.at) : 0,
      daysLate: finish === null ? 0 : workingDaysAfter(dayNumber(milestone.date), Math.floor(finish / MINUTES_PER_DAY), isOpen),
      why: (why?.reasons ?? []).slice(0, MOST_REASONS).map(({ text }) => text),
      links: why?.links ?? [],
    };
  });
};

const MOST_REASONS = 4;

/** Standard minutes of its tasks; a batch's are shared out evenly, the odd minutes to the first. */
const minutesByGarment = ({ nodes, problem }: Prepared): ReadonlyMap<string, Minutes> => {
  const minutes = new Map<string, Minutes>();
  for (const [at, node] of nodes.entries()) {
    const garments = workedAt(node);
    const whole = workMinutes(problem.nodes[at]!);
    const share = Math.floor(whole / garments.length);
    const odd = whole - share * garments.length;
    for (const [place, garment] of garments.entries()) minutes.set(garment, (minutes.get(garment) ?? 0) + share + (place < odd ? 1 : 0));
  }
  return minutes;
};

const workedAt = (node: PlanNode): readonly string[] => {
  if (node.kind === "operation") return node.garments;
  return node.kind === "other" && node.garment !== null ? [node.garment] : [];
};
