import type { EngineNode, LevellingProblem, Plan, Unplaced } from "../problem";

/** Work without a place has a reason that holds, and so has everything that waits for it. */
export function unplacedFaults(problem: LevellingProblem, plan: Plan): string[] {
  const faults: string[] = [];
  for (const one of plan.unplaced) {
    const node = problem.nodes[one.node]!;
    if (!holds(problem, plan, node, one)) faults.push(`${node.id}: "${one.reason}" is not so.`);
  }
  for (const { before, after } of problem.precedences) {
    if (plan.placed[before] === null && plan.placed[after] !== null) {
      faults.push(`${problem.nodes[after]!.id}: it has a place, but ${problem.nodes[before]!.id} before it has none.`);
    }
  }
  return faults;
}

function holds(problem: LevellingProblem, plan: Plan, node: EngineNode, { node: index, reason }: Unplaced): boolean {
  switch (reason) {
    case "no one has the skill": {
      const asked = node.kind === "fitting" ? [{ skill: node.fitterSkill, count: 1 }] : node.crew;
      return asked.some(({ skill, count }) => problem.makers.filter((maker) => (maker.pace[skill] ?? 0) > 0).length < count);
    }
    case "waits for an unplaced one":
      return problem.precedences.some(({ before, after }) => after === index && plan.placed[before] === null);
    case "performer never free":
      return node.kind === "fitting" && !problem.performers[node.performer]!.free.some(({ start, end }) => end > start);
    case "no room":
      return node.kind === "fitting" && !problem.rooms.some(({ count, free }) => count > 0 && free.length > 0);
    case "machine missing":
      return (
        node.kind === "task" &&
        node.machines.some(
          ({ machine, count }) => problem.machines[machine]!.count < count || problem.machines[machine]!.calendar?.length === 0,
        )
      );
    default:
      return true;
  }
}
