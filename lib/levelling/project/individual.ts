import type { Project } from "./project";

/** A plan pushed to one side of time: times count from that side. */
export interface Individual {
  /** The order it was made in. */
  readonly list: Int32Array;
  readonly start: Int32Array;
  /** The order for the pass from the other side: by descending finish. */
  readonly mirrored: Int32Array;
  /** Amounts worked by the tasks before each place of `mirrored`. */
  readonly worked: Float64Array;
  end: number;
}

export function newIndividual(count: number): Individual {
  return {
    list: new Int32Array(count),
    start: new Int32Array(count),
    mirrored: new Int32Array(count),
    worked: new Float64Array(count + 1),
    end: -1,
  };
}

/** Fills `mirrored` by counting, as times are small integers. */
export class Mirror {
  private readonly at: Int32Array;
  private readonly work: Float64Array;

  constructor(private readonly project: Project) {
    const { count, duration, amounts, capacities, horizon } = project;
    this.at = new Int32Array(horizon + 2);
    this.work = Float64Array.from(
      { length: count },
      (_, task) => duration[task]! * amounts.reduce((sum, amount, i) => sum + amount[task]! / Math.max(1, capacities[i]!), 0),
    );
  }

  fill({ list, start, mirrored, worked, end }: Individual): void {
    const { at, work } = this;
    const { duration } = this.project;
    const count = list.length;
    at.fill(0, 0, end + 2);
    for (let task = 0; task < count; task++) {
      const place = end - start[task]! - duration[task]! + 1;
      at[place] = at[place]! + 1;
    }
    for (let t = 1; t <= end; t++) at[t] = at[t]! + at[t - 1]!;
    // Backwards through the list, so that of tasks with one finish the later comes first, as precedence asks.
    for (let k = count - 1; k >= 0; k--) {
      const task = list[k]!;
      const t = end - start[task]! - duration[task]!;
      mirrored[at[t]!] = task;
      at[t] = at[t]! + 1;
    }
    for (let k = 0; k < count; k++) worked[k + 1] = worked[k]! + work[mirrored[k]!]!;
  }
}
