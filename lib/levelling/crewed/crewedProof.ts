import { Failures } from "../project/failures";
import { CrewAssignment } from "./crewAssignment";
import type { CrewedProject } from "./crewedProject";

/** More tasks than this do not fit into the bits of a number. */
export const MOST_TASKS = 52;

/** Seats tried to name the workers of one plan, and of all plans for each task that a search may begin. */
const MOST_SEATS = 200_000;
const SEATS_A_TASK = 10;

type Outcome = "found" | "none" | "unfinished";

/**
 * Looks for a plan that ends by a deadline, exactly: from one finish of a task to the next, every set of tasks that may begin
 * there, workers counted by sets of skills (Hall) instead of named. Cut off by time windows, by the work still to be done before
 * each latest end, by left shifts and by the cutset rule (after Demeulemeester & Herroelen, Management Science 38 (1992)
 * 1803-1818). A plan is found when workers can be named for it. Where a plan fails for want of names, its left shifts no longer
 * stand for it: the search begins again and leaves out no plan that begins each task at the finish of another.
 */
export class CrewedProof {
  readonly start: Int32Array;
  /** Workers of each task as bits, once found. */
  crew: Int32Array | null = null;
  /** Tasks begun over the whole search. */
  placed = 0;
  /** Plans by the deadline for which no workers could be named, since the search began. */
  private unnamed = 0;
  /** Left shifts are followed too. */
  private strict = false;
  /** Some naming was given up half way: then nothing is proved. */
  private gaveUp = false;
  private readonly finish: Int32Array;
  private readonly earliest: Int32Array;
  /** Per set of skills and time: seats taken. */
  private readonly used: readonly Int32Array[];
  /** Per task: the sets of skills it asks of. */
  private readonly asks: readonly Int32Array[];
  private failures = new Failures();
  private readonly assignment: CrewAssignment;
  private readonly byRest: Int32Array;
  private readonly byTail: Int32Array;
  private seatsUntil = 0;
  private deadline = 0;
  private until = 0;
  private left = 0;
  private begun = 0;

  constructor(
    private readonly project: CrewedProject,
    private readonly side: 0 | 1,
  ) {
    const { count, duration, horizon, amounts } = project;
    const { tail } = project.sides[side];
    this.start = new Int32Array(count).fill(-1);
    this.finish = new Int32Array(count);
    this.earliest = new Int32Array(count);
    this.used = amounts.map(() => new Int32Array(horizon + 1));
    this.asks = Array.from({ length: count }, (_, task) => Int32Array.from(amounts.keys()).filter((s) => amounts[s]![task]! > 0));
    this.assignment = new CrewAssignment(project);
    const tasks = Int32Array.from({ length: count }, (_, i) => i);
    this.byRest = tasks.slice().sort((a, b) => tail[b]! - duration[b]! - (tail[a]! - duration[a]!) || a - b);
    this.byTail = tasks.slice().sort((a, b) => tail[b]! - tail[a]! || a - b);
  }

  /** "none" proves that no plan ends by the deadline; found, the plan is in `start` and `crew`. */
  search(deadline: number, placements: number): Outcome {
    const until = this.placed + placements;
    this.seatsUntil = this.assignment.tried + SEATS_A_TASK * placements;
    let outcome = this.from(deadline, until);
    if (outcome === "none" && this.unnamed > 0 && !this.strict) {
      this.strict = true;
      this.failures = new Failures();
      outcome = this.from(deadline, until);
    }
    return outcome === "none" && this.gaveUp ? "unfinished" : outcome;
  }

  private from(deadline: number, until: number): Outcome {
    this.deadline = deadline;
    this.until = until;
    this.start.fill(-1);
    for (const each of this.used) each.fill(0);
    this.begun = 0;
    this.unnamed = 0;
    this.gaveUp = false;
    this.left = this.project.count;
    return this.at(0);
  }

  private at(now: number): Outcome {
    if (this.left === 0) return this.named();
    if (this.placed >= this.until || this.assignment.tried >= this.seatsUntil) return "unfinished";
    const { start, finish } = this;
    if (!this.windowsHold(now) || !this.amountsHold(now)) return "none";
    if (this.failures.covers(this.begun, now, finish)) return "none";
    const { unnamed } = this;
    const outcome = this.choose(now, this.candidates(now), 0);
    if (outcome === "none" && this.unnamed === unnamed) {
      const state = [now];
      for (let task = 0; task < start.length; task++) if (start[task]! >= 0 && finish[task]! > now) state.push(task, finish[task]!);
      this.failures.add(this.begun, Int32Array.from(state));
    }
    return outcome;
  }

  private named(): Outcome {
    const named = this.assignment.crews(this.start, MOST_SEATS);
    if (named instanceof Int32Array) {
      this.crew = named;
      return "found";
    }
    this.unnamed++;
    this.gaveUp ||= named === "given up";
    return "none";
  }

  private candidates(now: number): Int32Array {
    return this.byTail.filter((task) => this.start[task]! < 0 && this.earliest[task] === now);
  }

  private choose(now: number, candidates: Int32Array, from: number): Outcome {
    const { duration, sides } = this.project;
    for (let k = from; k < candidates.length; k++) {
      const task = candidates[k]!;
      const last = this.deadline - sides[this.side].tail[task]!;
      if (!this.fits(task, now)) {
        if (last <= now) return "none";
        continue;
      }
      if (this.strict || !this.couldBeEarlier(task, now)) {
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
    if (this.left === 0) return this.named();
    // Tasks without length may have let others begin now.
    return candidates.some((task) => this.start[task] === now && this.finish[task] === now) ? this.at(now) : "none";
  }

  private fits(task: number, at: number): boolean {
    const { amounts, capacities, duration } = this.project;
    if (duration[task] === 0) return true;
    for (const s of this.asks[task]!) if (this.used[s]![at]! + amounts[s]![task]! > capacities[s]!) return false;
    return true;
  }

  private begin(task: number, now: number, sign: 1 | -1): void {
    const { amounts, duration } = this.project;
    const until = now + duration[task]!;
    for (let s = 0; s < amounts.length; s++) {
      const used = this.used[s]!;
      const more = sign * amounts[s]![task]!;
      if (more !== 0) for (let u = now; u < until; u++) used[u] = used[u]! + more;
    }
    this.start[task] = sign === 1 ? now : -1;
    this.finish[task] = until;
    this.begun += sign * 2 ** task;
    this.left -= sign;
    if (sign === 1) this.placed++;
  }

  /** The same plan with this task moved to an earlier gap is looked at elsewhere. */
  private couldBeEarlier(task: number, now: number): boolean {
    const { duration, sides } = this.project;
    const { first, before } = sides[this.side];
    const length = duration[task]!;
    if (length === 0) return false;
    let ready = 0;
    for (let i = first[task]!; i < first[task + 1]!; i++) ready = Math.max(ready, this.finish[before[i]!]!);
    let run = 0;
    for (let u = ready; u < now; u++) {
      run = this.fits(task, u) ? run + 1 : 0;
      if (run >= length) return true;
    }
    return run > 0;
  }

  private windowsHold(now: number): boolean {
    const { start, finish, earliest, deadline } = this;
    const { duration, sides } = this.project;
    const { first, before, tail, order } = sides[this.side];
    for (const task of order) {
      if (start[task]! >= 0) continue;
      let t = now;
      for (let i = first[task]!; i < first[task + 1]!; i++) {
        const one = before[i]!;
        const done = start[one]! >= 0 ? finish[one]! : earliest[one]! + duration[one]!;
        if (done > t) t = done;
      }
      while (t + tail[task]! <= deadline && !this.fits(task, t)) t++;
      if (t + tail[task]! > deadline) return false;
      earliest[task] = t;
    }
    return true;
  }

  /** For each latest end: the work that must be done before it against what the running tasks leave. */
  private amountsHold(now: number): boolean {
    const { start, finish, byRest, deadline } = this;
    const { duration, amounts, capacities, sides } = this.project;
    const { tail } = sides[this.side];
    for (let s = 0; s < capacities.length; s++) {
      const amount = amounts[s]!;
      const capacity = capacities[s]!;
      let asked = 0;
      for (let task = 0; task < start.length; task++)
        if (start[task]! >= 0 && finish[task]! > now) asked += (finish[task]! - now) * amount[task]!;
      for (let k = 0; k < byRest.length; k++) {
        const task = byRest[k]!;
        if (start[task]! >= 0 || amount[task] === 0) continue;
        asked += amount[task]! * duration[task]!;
        const end = deadline - tail[task]! + duration[task]!;
        if (asked > capacity * (end - now) && asked - this.behind(end, now, amount) > capacity * (end - now)) return false;
      }
    }
    return true;
  }

  /** What running tasks take after `end` does not press on what must be done before it. */
  private behind(end: number, now: number, amount: Int32Array): number {
    let sum = 0;
    for (let task = 0; task < this.start.length; task++) {
      const { start, finish } = this;
      if (start[task]! >= 0 && finish[task]! > end && finish[task]! > now) sum += (finish[task]! - Math.max(end, now)) * amount[task]!;
    }
    return sum;
  }
}
