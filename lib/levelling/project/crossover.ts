import type { Chance } from "../random";
import type { Individual } from "./individual";
import type { Project } from "./project";

/** Windows drawn, of which that is taken where the father does most better. */
const DRAWS = 6;
const SHORTEST = 0.1;
const LONGEST = 0.5;

/**
 * A child takes a window of its father where he works more in less time than the mother, and all around it from her: the
 * peak crossover of Valls, Ballestin & Quintanilla, European Journal of Operational Research 185 (2008) 495-508, with the
 * window chosen against the mother.
 */
export class Crossover {
  private readonly taken: Int32Array;
  private readonly inWindow: Int32Array;
  private stamp = 0;
  private filled = 0;
  private from = 0;
  private to = 0;

  constructor(
    private readonly project: Project,
    private readonly chance: Chance,
  ) {
    this.taken = new Int32Array(project.count);
    this.inWindow = new Int32Array(project.count);
  }

  /** Fills `child` with an order for `side`, the parents being plans of the other side. */
  cross(side: 0 | 1, mother: Individual, father: Individual, child: Int32Array): void {
    this.chooseWindow(mother, father);
    const { taken, inWindow, from, to } = this;
    const { first, before } = this.project.sides[side];
    const count = child.length;
    const outer = mother.mirrored;
    const inner = father.mirrored;
    const stamp = ++this.stamp;
    for (let k = from; k < to; k++) inWindow[inner[k]!] = stamp;
    let filled = 0;
    for (let k = 0; filled < from && k < count; k++) {
      const task = outer[k]!;
      if (inWindow[task] === stamp) continue;
      let i = first[task]!;
      const end = first[task + 1]!;
      while (i < end && taken[before[i]!] === stamp) i++;
      if (i < end) continue;
      taken[task] = stamp;
      child[filled++] = task;
    }
    this.filled = filled;
    for (let k = from; k < to; k++) this.take(inner[k]!, side, child);
    filled = this.filled;
    for (let k = 0; filled < count; k++) {
      const task = outer[k]!;
      if (taken[task] === stamp) continue;
      taken[task] = stamp;
      child[filled++] = task;
    }
  }

  /** The task, after all that it waits for. */
  private take(task: number, side: 0 | 1, child: Int32Array): void {
    const { taken, stamp } = this;
    if (taken[task] === stamp) return;
    taken[task] = stamp;
    const { first, before } = this.project.sides[side];
    for (let i = first[task]!; i < first[task + 1]!; i++) if (taken[before[i]!] !== stamp) this.take(before[i]!, side, child);
    child[this.filled++] = task;
  }

  private chooseWindow(mother: Individual, father: Individual): void {
    const { chance } = this;
    const { count } = this.project;
    let best = Number.NEGATIVE_INFINITY;
    for (let draw = 0; draw < DRAWS; draw++) {
      const length = Math.max(1, Math.floor(count * (SHORTEST + (LONGEST - SHORTEST) * chance.next())));
      const from = chance.below(count - length + 1);
      const gain = this.density(father, from, from + length) - this.density(mother, from, from + length);
      if (gain <= best) continue;
      best = gain;
      this.from = from;
      this.to = from + length;
    }
  }

  /** Amounts worked per unit of time by the tasks at these places. */
  private density({ mirrored, worked, start, end }: Individual, from: number, to: number): number {
    const { duration } = this.project;
    const opens = start[mirrored[from]!]! + duration[mirrored[from]!]!;
    const closes = to < mirrored.length ? start[mirrored[to]!]! + duration[mirrored[to]!]! : 0;
    return (worked[to]! - worked[from]!) / (Math.min(end, opens) - closes + 1);
  }
}
