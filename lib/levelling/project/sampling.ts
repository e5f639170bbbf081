import type { Chance } from "../random";
import type { Project } from "./project";

/**
 * Orders by latest start, with chance: of the tasks that may come next, each with a weight that grows with its regret
 * against the least pressing (Drexl, Management Science 37 (1991) 1590-1602; Kolisch, European Journal of Operational
 * Research 90 (1996) 320-333).
 */
export class Sampling {
  private readonly after: readonly (readonly number[])[];

  constructor(private readonly project: Project) {
    const { first, before } = project.sides[0];
    const after: number[][] = Array.from({ length: project.count }, () => []);
    for (let task = 0; task < project.count; task++) {
      for (let i = first[task]!; i < first[task + 1]!; i++) after[before[i]!]!.push(task);
    }
    this.after = after;
  }

  /** Without a chance, the most pressing first. */
  fill(list: Int32Array, chance: Chance | null): void {
    const { count, duration, sides } = this.project;
    const { first, tail } = sides[0];
    const missing = Int32Array.from({ length: count }, (_, task) => first[task + 1]! - first[task]!);
    const ready: number[] = [];
    for (let task = 0; task < count; task++) if (missing[task] === 0) ready.push(task);
    const pressing = (task: number): number => tail[task]! - duration[task]!;
    for (let k = 0; k < count; k++) {
      const least = ready.reduce((low, task) => Math.min(low, pressing(task)), Number.POSITIVE_INFINITY);
      const at =
        chance === null
          ? ready.reduce((best, task, i) => (pressing(task) > pressing(ready[best]!) ? i : best), 0)
          : chance.pick(ready.map((task) => (pressing(task) - least + 1) ** 1.5));
      const task = ready[at]!;
      ready[at] = ready.at(-1)!;
      ready.pop();
      list[k] = task;
      for (const next of this.after[task]!) {
        missing[next] = missing[next]! - 1;
        if (missing[next] === 0) ready.push(next);
      }
    }
  }
}
