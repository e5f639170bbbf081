import { dayNumber } from "#lib/calendar/days";
import { MINUTES_PER_DAY } from "#lib/calendar/plainDate";
import { workingDaysAfter } from "#lib/calendar/workingDays";
import { workroomHours } from "#lib/labour/calendars";
import type { LevellingAnswer } from "#lib/levelling/problem";
import type { Minutes } from "#lib/units/quantities";
import { toWall } from "./axis";
import type { Prepared } from "./prepared";
import type { GarmentState } from "./stagingPlan";
import type { Lateness } from "./why";

/** How each garment stands in the plan, in the order of the piece list. One without work has no finish and is never late. */
export const garmentStates = (prepared: Prepared, answer: LevellingAnswer, late: ReadonlyMap<string, Lateness>): GarmentState[] => {
  const { garments, staging, problem, nodes, axis } = prepared;
  const isOpen = openDays(prepared);
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
    if (node.kind !== "operation") continue;
    const share = Math.floor(problem.nodes[at]!.minutes / node.garments.length);
    const odd = problem.nodes[at]!.minutes - share * node.garments.length;
    for (const [place, garment] of node.garments.entries())
      minutes.set(garment, (minutes.get(garment) ?? 0) + share + (place < odd ? 1 : 0));
  }
  return minutes;
};

const openDays = ({ staging, dayZero, axis, problem }: Prepared) => {
  const days = { from: dayZero, to: Math.ceil(toWall(axis, problem.horizon) / MINUTES_PER_DAY) };
  const open = new Set(workroomHours(staging.makers, staging.absences, days).map(({ start }) => Math.floor(start / MINUTES_PER_DAY)));
  return (day: number) => open.has(day);
};
