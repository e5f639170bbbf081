import type { EngineTask, LevellingProblem, Placement, Plan } from "../problem";

/**
 * Work done in one minute by the crew of a placement, in millionths of a standard minute: speed x pace of the slowest of them,
 * 0 when one is not there or a machine is closed. Without a crew a minute is a minute.
 */
export function workableMinutes(problem: LevellingProblem, task: EngineTask, { makers, overtime }: Placement): (minute: number) => number {
  const known = new Map<number, number>();
  const compute = (minute: number): number => {
    for (const { machine } of task.machines) {
      const { calendar } = problem.machines[machine]!;
      if (calendar !== null && !calendar.some(({ start, end }) => start <= minute && minute < end)) return 0;
    }
    let rate = makers.length === 0 ? 1_000_000 : Number.POSITIVE_INFINITY;
    for (const { maker, skill } of makers) {
      const stretch = problem.makers[maker]!.calendar.find(({ start, end }) => start <= minute && minute < end);
      const there = stretch !== undefined && (overtime || !stretch.overtime);
      rate = Math.min(rate, there ? stretch.speed * (problem.makers[maker]!.pace[skill] ?? 0) : 0);
    }
    return rate;
  };
  return (minute) => {
    const found = known.get(minute) ?? compute(minute);
    known.set(minute, found);
    return found;
  };
}

/** Minutes in which one of these makers stands at a fitting. */
export function fittingMinutes(plan: Plan, makers: readonly number[]): Set<number> {
  const minutes = new Set<number>();
  for (const visit of plan.visits) {
    if (makers.includes(visit.fitter)) for (let minute = visit.start; minute < visit.end; minute++) minutes.add(minute);
  }
  return minutes;
}
