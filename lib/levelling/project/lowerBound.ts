import type { Project } from "./project";

type Bounded = Pick<Project, "count" | "duration" | "sides" | "amounts" | "capacities">;

/**
 * No plan is shorter: the critical path, and per resource the amounts of all tasks that begin no sooner than some head and
 * leave no less than some tail (Carlier & Latapie, RAIRO 25 (1991) 311-340).
 */
export function lowerBound({ count, duration, sides, amounts, capacities }: Bounded): number {
  const [forward, backward] = sides;
  let bound = forward.tail.reduce((most, each) => Math.max(most, each), 0);
  const head = (task: number): number => backward.tail[task]! - duration[task]!;
  const rest = (task: number): number => forward.tail[task]! - duration[task]!;
  const tasks = Array.from({ length: count }, (_, task) => task);
  const byRest = tasks.toSorted((a, b) => rest(b) - rest(a));
  const heads = [...new Set(tasks.map(head))];
  amounts.forEach((amount, r) => {
    for (const from of heads) {
      let asked = 0;
      for (const task of byRest) {
        if (amount[task] === 0 || head(task) < from) continue;
        asked += amount[task]! * duration[task]!;
        bound = Math.max(bound, from + Math.ceil(asked / capacities[r]!) + rest(task));
      }
    }
  });
  return bound;
}
