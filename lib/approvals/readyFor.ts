import { dayNumber } from "#lib/calendar/days";
import { MINUTES_PER_DAY } from "#lib/calendar/plainDate";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { MilestoneKind } from "#lib/staging/staging";

/** Whether all garments and other work due by the first milestone of a kind are ready for it, at least by then; null when there is none. */
export const readyFor = ({ staging, garmentStates, nodes, tasks }: StagingPlan, kind: MilestoneKind): boolean | null => {
  const walls = staging.milestones.map(({ code, kind: of, date, at }) => ({ code, of, wall: dayNumber(date) * MINUTES_PER_DAY + at }));
  const milestone = walls.filter(({ of }) => of === kind).sort((a, b) => a.wall - b.wall)[0];
  if (!milestone) return null;
  const inTime = (end: number | null) => end !== null && end <= milestone.wall;
  const worked = new Set(nodes.flatMap((node) => (node.kind === "finished" ? node.garment : [])));
  const dueOf = new Map(staging.otherWork.map((task) => [task.code, walls.find(({ code }) => code === task.due)?.wall]));
  return (
    garmentStates.every(({ garment, due, finish }) => due > milestone.wall || !worked.has(garment) || inTime(finish)) &&
    tasks.every(
      ({ origin, operation, end }) => origin === "operation" || !((dueOf.get(operation) ?? Infinity) <= milestone.wall) || inTime(end),
    )
  );
};
