import type { LevellingProblem } from "./problem";

/** What comes after lateness and overtime, and may be put in another order by the user. */
export type Aim = "unevenness" | "moved" | "visits";

/** What a plan is judged by once nothing can be done about lateness and overtime. */
export interface Aims {
  readonly order: readonly Aim[];
  /** Unevenness is felt in steps of this; finer differences only decide between plans that are alike in all else. */
  readonly evennessStep: number;
}

/** A fresh plan is to be even, a repaired one near the plan that people already know. */
const usualOrder = ({ current }: LevellingProblem): readonly Aim[] =>
  current === null ? ["unevenness", "moved", "visits"] : ["moved", "unevenness", "visits"];

export const aimsOf = (problem: LevellingProblem, order: readonly Aim[] = usualOrder(problem)): Aims => ({
  order: [...order, ...usualOrder(problem).filter((aim) => !order.includes(aim))],
  evennessStep: Math.max(0.1, leastUnevenness(problem) / 100),
});

/** No plan is more even: all the work spread over all the normal hours in proportion (Cauchy-Schwarz). */
function leastUnevenness({ nodes, makers, week }: LevellingProblem): number {
  const work = nodes.reduce(
    (sum, node) => sum + node.minutes * (node.kind === "fitting" ? 1 : node.crew.reduce((people, { count }) => people + count, 0)),
    0,
  );
  const hours = new Map<number, number>();
  makers.forEach(({ calendar }, maker) => {
    for (const { start, end, overtime } of calendar) {
      const cell = Math.floor((start - week.offset) / week.minutes) * makers.length + maker;
      if (!overtime) hours.set(cell, (hours.get(cell) ?? 0) + end - start);
    }
  });
  const squares = [...hours.values()].reduce((sum, minutes) => sum + minutes ** 2, 0);
  return squares === 0 ? 0 : work ** 2 / squares;
}
