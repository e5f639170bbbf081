import type { LevellingProblem, Measures, Plan } from "./problem";

/**
 * What a plan is judged by. Work that has no place counts as late until the horizon. Unevenness is the sum over makers and
 * weeks of (minutes worked / minutes of normal hours) squared; weeks with under an hour of normal hours count as an hour.
 */
export function measuresOf(problem: LevellingProblem, plan: Plan): Measures {
  let weightedLateness = 0;
  let lateDues = 0;
  for (const due of problem.dues) {
    const late = Math.max(0, (plan.placed[due.node]?.end ?? problem.horizon) - due.at);
    weightedLateness += due.weight * late;
    if (late > 0) lateDues++;
  }
  return {
    weightedLateness,
    lateDues,
    overtimeMinutes: overtimeOf(problem, plan),
    unevenness: unevennessOf(problem, plan),
    moved: movedFrom(problem, plan),
    finish: plan.placed.reduce((latest, placement) => Math.max(latest, placement?.end ?? 0), 0),
    visits: plan.visits.length,
  };
}

/** Minutes of makers inside their overtime stretches. */
export function overtimeOf(problem: LevellingProblem, plan: Plan): number {
  let minutes = 0;
  for (const placement of plan.placed) {
    if (placement === null || !placement.overtime) continue;
    for (const { maker } of placement.makers) {
      for (const over of problem.makers[maker]!.calendar) {
        if (!over.overtime) continue;
        for (const stretch of placement.stretches) {
          minutes += Math.max(0, Math.min(over.end, stretch.end) - Math.max(over.start, stretch.start));
        }
      }
    }
  }
  return minutes;
}

export function unevennessOf(problem: LevellingProblem, plan: Plan): number {
  const { minutes: length, offset } = problem.week;
  const weekOf = (at: number): number => Math.floor((at - offset) / length);
  const cells = new Map<number, { worked: number; free: number }>();
  const weeks = weekOf(problem.horizon) + 2;
  const spread = (maker: number, start: number, end: number, field: "worked" | "free"): void => {
    for (let at = start; at < end; ) {
      const week = weekOf(at);
      const next = Math.min(end, (week + 1) * length + offset);
      const key = maker * weeks + week + 1;
      const cell = cells.get(key) ?? { worked: 0, free: 0 };
      cell[field] += next - at;
      cells.set(key, cell);
      at = next;
    }
  };
  for (const placement of plan.placed) {
    if (placement === null) continue;
    for (const { maker } of placement.makers) for (const { start, end } of placement.stretches) spread(maker, start, end, "worked");
  }
  problem.makers.forEach((maker, index) => {
    for (const stretch of maker.calendar) if (!stretch.overtime) spread(index, stretch.start, stretch.end, "free");
  });
  // Millionths as whole numbers: their sum does not depend on the order of the makers.
  let millionths = 0;
  for (const { worked, free } of cells.values()) millionths += Math.round((worked / Math.max(60, free)) ** 2 * 1e6);
  return millionths / 1e6;
}

export function movedFrom(problem: LevellingProblem, plan: Plan): number {
  if (problem.current === null) return 0;
  const sign = (placement: Plan["placed"][number] | undefined): string =>
    placement ? `${Math.floor(placement.start / 1440)}:${placement.makers.map(({ maker }) => maker).join()}` : "none";
  return problem.current.placed.filter((placement, node) => placement !== null && sign(placement) !== sign(plan.placed[node])).length;
}
