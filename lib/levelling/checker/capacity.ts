import type { LevellingProblem, Plan } from "../problem";

interface Use {
  readonly start: number;
  readonly end: number;
  readonly count: number;
}

/** Machines are held from start to end of a task, nights included; never more of them than there are. */
export function machineFaults(problem: LevellingProblem, plan: Plan): string[] {
  return problem.machines.flatMap((machine, index) => {
    const uses = problem.nodes.flatMap((node, at): Use[] => {
      const placement = plan.placed[at];
      if (node.kind !== "task" || !placement) return [];
      return node.machines
        .filter((one) => one.machine === index)
        .map(({ count }) => ({ start: placement.start, end: placement.end, count }));
    });
    return overUse(machine.id, machine.count, [...uses, ...others(machine.taken)]);
  });
}

/** No more visits in a room than it takes, and only while it is free. */
export function roomFaults(problem: LevellingProblem, plan: Plan): string[] {
  return problem.rooms.flatMap((room, index) => {
    const visits = plan.visits.filter((visit) => visit.room === index);
    const closed = visits
      .filter(({ start, end }) => !coveredBy(room.free, start, end))
      .map(({ start }) => `${room.id}: it is not free for the visit at ${start}.`);
    return [...closed, ...overUse(room.id, room.count, [...others(visits), ...others(room.taken)])];
  });
}

const others = (taken: readonly { readonly start: number; readonly end: number }[] = []): Use[] =>
  taken.map(({ start, end }) => ({ start, end, count: 1 }));

function overUse(id: string, count: number, uses: readonly Use[]): string[] {
  const events = uses
    .filter(({ start, end }) => end > start)
    .flatMap((use) => [
      { at: use.start, change: use.count },
      { at: use.end, change: -use.count },
    ])
    .sort((a, b) => a.at - b.at || a.change - b.change);
  let used = 0;
  for (const { at, change } of events) {
    used += change;
    if (used > count) return [`${id}: ${used} in use at minute ${at}, ${count} there.`];
  }
  return [];
}

/** Is every minute of [start, end) inside one of the intervals? */
export function coveredBy(intervals: readonly { readonly start: number; readonly end: number }[], start: number, end: number): boolean {
  for (let minute = start; minute < end; minute++) {
    if (!intervals.some((interval) => interval.start <= minute && minute < interval.end)) return false;
  }
  return true;
}
