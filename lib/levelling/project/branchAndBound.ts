import { Failures } from "./failures";
import type { Project } from "./project";

/** More tasks than this do not fit into the bits of a number. */
export const MOST_TASKS = 52;

type Outcome = "found" | "none" | "unfinished";

/**
 * Looks for a plan that ends by a deadline, exactly: from one finish of a task to the next, every set of tasks that may
 * begin there. Cut off by time windows, by the amounts still to be worked before each latest end, by left shifts and by the
 * cutset rule (after Demeulemeester & Herroelen, Management Science 38 (1992) 1803-1818 and 43 (1997) 1485-1492).
 */
export class BranchAndBound {
  readonly start: Int32Array;
  /** Tasks begun over the whole search. */
  placed = 0;
  private readonly finish: Int32Array;
  private readonly available: Int32Array;
  private readonly earliest: Int32Array;
  private readonly failures = new Failures();
  private readonly bit: Float64Array;
  /** Tasks by the length of what must follow their end, longest first. */
  private readonly byRest: Int32Array;
  private readonly byTail: Int32Array;
  private deadline = 0;
  private until = 0;
  private left = 0;
  private begun = 0;

  constructor(
    private readonly project: Project,
    private readonly side: 0 | 1,
  ) {
    const { count, duration, horizon } = project;
    const { tail } = project.sides[side];
    this.start = new Int32Array(count).fill(-1);
    this.finish = new Int32Array(count);
    this.earliest = new Int32Array(count);
    this.available = new Int32Array(horizon + 1).fill(project.capacity);
    this.bit = Float64Array.from({ length: count }, (_, i) => 2 ** i);
    const tasks = Int32Array.from({ length: count }, (_, i) => i);
    this.byRest = tasks.slice().sort((a, b) => tail[b]! - duration[b]! - (tail[a]! - duration[a]!) || a - b);
    this.byTail = tasks.slice().sort((a, b) => tail[b]! - tail[a]! || a - b);
  }

  /** "none" proves that no plan ends by the deadline; found, the plan is in `start`. */
  search(deadline: number, placements: number): Outcome {
    this.deadline = deadline;
    this.until = this.placed + placements;
    this.start.fill(-1);
    this.available.fill(this.project.capacity);
    this.begun = 0;
    this.left = this.project.count;
    return this.at(0);
  }

  private at(now: number): Outcome {
    if (this.left === 0) return "found";
    if (this.placed >= this.until) return "unfinished";
    const { start, finish } = this;
    if (!this.windowsHold(now) || !this.amountsHold(now)) return "none";
    if (this.failures.covers(this.begun, now, finish)) return "none";
    const outcome = this.choose(now, this.candidates(now), 0);
    if (outcome === "none") {
      const state = [now];
      for (let task = 0; task < start.length; task++) if (start[task]! >= 0 && finish[task]! > now) state.push(task, finish[task]!);
      this.failures.add(this.begun, Int32Array.from(state));
    }
    return outcome;
  }

  /** Tasks that may begin now, the most pressing first. */
  private candidates(now: number): Int32Array {
    return this.byTail.filter((task) => this.start[task]! < 0 && this.earliest[task] === now);
  }

  private choose(now: number, candidates: Int32Array, from: number): Outcome {
    const { duration, demand, guard, sides } = this.project;
    for (let k = from; k < candidates.length; k++) {
      const task = candidates[k]!;
      const last = this.deadline - sides[this.side].tail[task]!;
      const fits = ((this.available[now]! - demand[task]!) & guard) === guard || duration[task] === 0;
      if (!fits) {
        if (last <= now) return "none";
        continue;
      }
      if (!this.couldBeEarlier(task, now)) {
        this.begin(task, now, 1);
        const outcome = this.choose(now, candidates, k + 1);
        if (outcome !== "none") return outcome;
        this.begin(task, now, -1);
      }
      if (last <= now || duration[task] === 0) return "none";
    }
    let next = this.project.horizon + 1;
    for (let task = 0; task < this.start.length; task++) {
      if (this.start[task]! >= 0 && this.finish[task]! > now && this.finish[task]! < next) next = this.finish[task]!;
    }
    if (next <= this.project.horizon) return this.at(next);
    // Tasks without length may have let others begin now.
    return this.left === 0 ? "found" : this.newlyReady(now, candidates) ? this.at(now) : "none";
  }

  private newlyReady(now: number, candidates: Int32Array): boolean {
    return candidates.some((task) => this.start[task] === now && this.finish[task] === now);
  }

  private begin(task: number, now: number, sign: 1 | -1): void {
    const length = this.project.duration[task]!;
    const need = sign * this.project.demand[task]!;
    for (let u = now; u < now + length; u++) this.available[u] = this.available[u]! - need;
    this.start[task] = sign === 1 ? now : -1;
    this.finish[task] = now + length;
    this.begun += sign * this.bit[task]!;
    this.left -= sign;
    if (sign === 1) this.placed++;
  }

  /** The same plan with this task moved to an earlier gap is looked at elsewhere. */
  private couldBeEarlier(task: number, now: number): boolean {
    const { duration, demand, guard, sides } = this.project;
    const { first, before } = sides[this.side];
    const length = duration[task]!;
    if (length === 0) return false;
    let ready = 0;
    for (let i = first[task]!; i < first[task + 1]!; i++) ready = Math.max(ready, this.finish[before[i]!]!);
    let run = 0;
    for (let u = ready; u < now; u++) {
      run = ((this.available[u]! - demand[task]!) & guard) === guard ? run + 1 : 0;
      if (run >= length) return true;
    }
    return run > 0;
  }

  private windowsHold(now: number): boolean {
    const { start, finish, earliest, available, deadline } = this;
    const { duration, demand, guard, sides } = this.project;
    const { first, before, tail, order } = sides[this.side];
    for (const task of order) {
      if (start[task]! >= 0) continue;
      let t = now;
      for (let i = first[task]!; i < first[task + 1]!; i++) {
        const one = before[i]!;
        const done = start[one]! >= 0 ? finish[one]! : earliest[one]! + duration[one]!;
        if (done > t) t = done;
      }
      if (duration[task]! > 0) while (((available[t]! - demand[task]!) & guard) !== guard) t++;
      if (t + tail[task]! > deadline) return false;
      earliest[task] = t;
    }
    return true;
  }

  /** For each latest end: what must be worked before it against what the running tasks leave. */
  private amountsHold(now: number): boolean {
    const { start, finish, byRest, deadline } = this;
    const { duration, amounts, capacities, sides } = this.project;
    const { tail } = sides[this.side];
    for (let r = 0; r < capacities.length; r++) {
      const amount = amounts[r]!;
      const capacity = capacities[r]!;
      let asked = 0;
      for (let task = 0; task < start.length; task++) {
        if (start[task]! >= 0 && finish[task]! > now) asked += (finish[task]! - now) * amount[task]!;
      }
      // Running tasks end early enough for every deadline that matters here, but for the part behind it.
      let behind = 0;
      for (let k = 0; k < byRest.length; k++) {
        const task = byRest[k]!;
        if (start[task]! >= 0 || amount[task] === 0) continue;
        asked += amount[task]! * duration[task]!;
        const end = deadline - tail[task]! + duration[task]!;
        if (asked - behind > capacity * (end - now)) {
          behind = 0;
          for (let other = 0; other < start.length; other++) {
            if (start[other]! >= 0 && finish[other]! > end && finish[other]! > now)
              behind += (finish[other]! - Math.max(end, now)) * amount[other]!;
          }
          if (asked - behind > capacity * (end - now)) return false;
        }
      }
    }
    return true;
  }
}
