import type { Project } from "./project";

/** Serial generation: the tasks of a list one by one, each at the earliest time its predecessors and the resources allow. */
export class Placer {
  private readonly available: Int32Array;
  private readonly finish: Int32Array;

  constructor(private readonly project: Project) {
    this.available = new Int32Array(project.horizon + 1);
    this.finish = new Int32Array(project.count);
  }

  /** Tasks placed so far, over all calls. */
  placed = 0;

  /**
   * Fills `start`; the time all is done, or -1 as soon as that is seen to be later than `limit`. `list` has each task after
   * those before it on that side.
   */
  place(side: 0 | 1, list: Int32Array, start: Int32Array, limit: number, kept = 0): number {
    const { available, finish } = this;
    const { duration, demand, guard, capacity } = this.project;
    const { first, before, tail } = this.project.sides[side];
    let end = 0;
    let filled = 0;
    for (let k = 0; k < kept; k++) {
      const task = list[k]!;
      const t = start[task]!;
      const until = t + duration[task]!;
      const need = demand[task]!;
      while (filled < until) available[filled++] = capacity;
      for (let u = t; u < until; u++) available[u] = available[u]! - need;
      finish[task] = until;
      if (until > end) end = until;
    }
    this.placed -= kept;
    for (let k = kept; k < list.length; k++) {
      const task = list[k]!;
      let t = 0;
      for (let i = first[task]!, to = first[task + 1]!; i < to; i++) {
        const done = finish[before[i]!]!;
        if (done > t) t = done;
      }
      if (t + tail[task]! > limit) {
        this.placed += k;
        return -1;
      }
      const length = duration[task]!;
      const need = demand[task]!;
      if (length > 0 && need !== 0) {
        // From the back of the window: what is too full there rules out all starts up to it.
        let floor = t;
        let u = t + length - 1;
        while (u >= floor) {
          if (u < filled && ((available[u]! - need) & guard) !== guard) {
            floor = t + length;
            t = u + 1;
            u = t + length - 1;
          } else u--;
        }
        if (t + tail[task]! > limit) {
          this.placed += k + 1;
          return -1;
        }
        const until = t + length;
        while (filled < until) available[filled++] = capacity;
        for (u = t; u < until; u++) available[u] = available[u]! - need;
      }
      start[task] = t;
      finish[task] = t + length;
      if (t + length > end) end = t + length;
    }
    this.placed += list.length;
    return end;
  }
}
