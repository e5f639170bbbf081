import type { Chance } from "../random";
import type { Project } from "./project";

/**
 * Orders by latest start, with chance: of the tasks that may come next, each with a weight that grows with its regret
 * against the least pressing (Drexl, Management Science 37 (1991) 1590-1602; Kolisch, European Journal of Operational
 * Research 90 (1996) 320-333).
 */
export class Sampling {
  private readonly after: readonly (readonly number[])[];
  private readonly ready: Int32Array;
  private readonly missing: Int32Array;
  /** The least time that must follow each task. */
  private readonly pressing: Int32Array;
  /** By regret. */
  private readonly weights: Float64Array;

  constructor(private readonly project: Project) {
    const { first, before, tail } = project.sides[0];
    this.ready = new Int32Array(project.count);
    this.missing = new Int32Array(project.count);
    this.pressing = tail.map((each, task) => each - project.duration[task]!);
    this.weights = Float64Array.from(
      { length: this.pressing.reduce((most, each) => Math.max(most, each), 0) + 1 },
      (_, i) => (i + 1) ** 1.5,
    );
    const after: number[][] = Array.from({ length: project.count }, () => []);
    for (let task = 0; task < project.count; task++) {
      for (let i = first[task]!; i < first[task + 1]!; i++) after[before[i]!]!.push(task);
    }
    this.after = after;
  }

  /** Without a chance, the most pressing first. */
  fill(list: Int32Array, chance: Chance | null): void {
    const { ready, missing } = this;
    const { first } = this.project.sides[0];
    const count = list.length;
    let waiting = 0;
    for (let task = 0; task < count; task++) {
      missing[task] = first[task + 1]! - first[task]!;
      if (missing[task] === 0) ready[waiting++] = task;
    }
    for (let k = 0; k < count; k++) {
      const at = chance === null ? this.most(waiting) : this.drawn(waiting, chance);
      const task = ready[at]!;
      ready[at] = ready[--waiting]!;
      list[k] = task;
      for (const next of this.after[task]!) {
        missing[next] = missing[next]! - 1;
        if (missing[next] === 0) ready[waiting++] = next;
      }
    }
  }

  private most(waiting: number): number {
    const { ready, pressing } = this;
    let most = 0;
    for (let i = 1; i < waiting; i++) if (pressing[ready[i]!]! > pressing[ready[most]!]!) most = i;
    return most;
  }

  private drawn(waiting: number, chance: Chance): number {
    const { ready, pressing, weights } = this;
    let least = Number.POSITIVE_INFINITY;
    for (let i = 0; i < waiting; i++) least = Math.min(least, pressing[ready[i]!]!);
    let total = 0;
    for (let i = 0; i < waiting; i++) total += weights[pressing[ready[i]!]! - least]!;
    let at = chance.next() * total;
    for (let i = 0; i < waiting; i++) {
      at -= weights[pressing[ready[i]!]! - least]!;
      if (at < 0) return i;
    }
    return waiting - 1;
  }
}
