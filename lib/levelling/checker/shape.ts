import type { LevellingProblem, Plan } from "../problem";

/** The plan speaks of the nodes, makers, rooms and performers there are, each node once, in whole minutes inside the horizon. */
export function shapeFaults(problem: LevellingProblem, plan: Plan): string[] {
  const faults: string[] = [];
  const { nodes, makers, rooms, performers, skills, horizon } = problem;
  if (plan.placed.length !== nodes.length) return [`The plan has ${plan.placed.length} places for ${nodes.length} nodes.`];
  const known = (index: number, list: readonly unknown[]): boolean => Number.isInteger(index) && index >= 0 && index < list.length;
  plan.placed.forEach((placement, node) => {
    if (placement === null) return;
    const { id } = nodes[node]!;
    const minutes = [placement.start, placement.end, ...placement.stretches.flatMap(({ start, end }) => [start, end])];
    if (!minutes.every((minute) => Number.isInteger(minute) && minute >= 0 && minute <= horizon))
      faults.push(`${id}: a time is not a whole minute inside the horizon.`);
    if (placement.end < placement.start) faults.push(`${id}: it ends before it starts.`);
    for (const { maker, skill } of placement.makers) {
      if (!known(maker, makers) || !known(skill, skills)) faults.push(`${id}: maker ${maker} or skill ${skill} is not known.`);
    }
  });
  for (const visit of plan.visits) {
    if (!known(visit.performer, performers) || !known(visit.fitter, makers) || !known(visit.room, rooms))
      faults.push("A visit names somebody or a room not known.");
    if (visit.fittings.length === 0) faults.push("A visit has no fitting.");
    for (const node of visit.fittings) if (!known(node, nodes)) faults.push(`A visit names node ${node}, which is not known.`);
  }
  const times = new Map<number, number>();
  for (const { node } of plan.unplaced) {
    if (!known(node, nodes)) faults.push(`Unplaced node ${node} is not known.`);
    times.set(node, (times.get(node) ?? 0) + 1);
  }
  nodes.forEach(({ id }, node) => {
    const told = times.get(node) ?? 0;
    if (plan.placed[node] === null && told !== 1) faults.push(`${id}: it has no place, and ${told} reasons are given.`);
    if (plan.placed[node] !== null && told > 0) faults.push(`${id}: it has a place and is also named as unplaced.`);
  });
  return faults;
}
