import type { LevellingProblem, Plan } from "../problem";

/** Every link is kept: least lag and greatest lag, on the clock or in working time of the workroom. */
export function precedenceFaults(problem: LevellingProblem, plan: Plan): string[] {
  return problem.precedences.flatMap((link) => {
    const before = plan.placed[link.before];
    const after = plan.placed[link.after];
    if (!before || !after) return [];
    const names = `${problem.nodes[link.after]!.id} after ${problem.nodes[link.before]!.id}`;
    const lag = link.lagKind === "working" ? workingBetween(problem, before.end, after.start) : after.start - before.end;
    const faults: string[] = [];
    if (lag < link.lag || (link.lagKind === "working" && after.start < before.end))
      faults.push(`${names}: ${lag} minutes between them, ${link.lag} asked.`);
    if (link.maxLag !== null && lag > link.maxLag) faults.push(`${names}: ${lag} minutes between them, ${link.maxLag} at most.`);
    return faults;
  });
}

/** Minutes of [from, to) in the workroom's hours, or in which anybody has normal hours; where there are none at all, every minute. */
function workingBetween(problem: LevellingProblem, from: number, to: number): number {
  const stretches =
    problem.open ?? problem.makers.flatMap((maker) => maker.calendar.filter(({ overtime, speed }) => !overtime && speed > 0));
  if (stretches.length === 0) return to - from;
  let minutes = 0;
  for (let minute = from; minute < to; minute++) if (stretches.some(({ start, end }) => start <= minute && minute < end)) minutes++;
  return minutes;
}
