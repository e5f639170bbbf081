import { Busy } from "./busy";
import { compile } from "./compiled";
import { workedIn } from "./planOf";
import type { LevellingProblem, Plan } from "./problem";

/**
 * A stored plan with the stretches worked, derived from today's calendars and the plan's own visits. Where a calendar has
 * changed since, only what still lies inside the stored start and end is given.
 */
export function withStretches(problem: LevellingProblem, plan: Plan): Plan {
  const compiled = compile(problem);
  const appointments = problem.makers.map(() => new Busy());
  for (const visit of plan.visits) {
    const list = appointments[visit.fitter];
    if (list?.isFree(visit.start, visit.end)) list.add(visit.start, visit.end, -1);
  }
  const placed = plan.placed.map((placement, node) => {
    if (placement === null) return null;
    const { start, end, makers, overtime } = placement;
    const stretches = workedIn(compiled, appointments, node, start, end, makers, overtime)
      .map((stretch) => ({ start: stretch.start, end: Math.min(stretch.end, end) }))
      .filter((stretch) => stretch.start < stretch.end);
    return { ...placement, stretches };
  });
  return { ...plan, placed };
}
