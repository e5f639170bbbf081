import { bitsIn, type CrewedProject } from "./crewedProject";

/** Names workers for tasks whose starts are given, with backtracking: nobody works at two tasks at once. */
export class CrewAssignment {
  /** Workers with the same skills, as bits: which of them works makes no difference. */
  private readonly kinds: readonly { readonly bits: number; readonly skills: number }[];
  /** Seats tried over all plans. */
  tried = 0;
  private until = 0;

  constructor(private readonly project: CrewedProject) {
    const { workers, having } = project;
    const kinds = new Map<number, number>();
    for (let worker = 0; worker < workers; worker++) {
      const skills = having.reduce((set, bits, skill) => ((bits >> worker) & 1 ? set | (1 << skill) : set), 0);
      kinds.set(skills, (kinds.get(skills) ?? 0) | (1 << worker));
    }
    // Who has fewest skills is taken first.
    this.kinds = [...kinds]
      .map(([skills, bits]) => ({ bits, skills }))
      .sort((a, b) => bitsIn(a.skills) - bitsIn(b.skills) || a.skills - b.skills);
  }

  /** The workers of each task, as bits; null when there is no way, "given up" after so many seats tried. */
  crews(start: Int32Array, most: number): Int32Array | "given up" | null {
    const { count, duration, seats } = this.project;
    const order = Array.from({ length: count }, (_, task) => task)
      .filter((task) => duration[task]! > 0 && seats[task]!.length > 0)
      .sort((a, b) => start[a]! - start[b]! || seats[b]!.length - seats[a]!.length || a - b);
    const crew = new Int32Array(count);
    this.until = this.tried + most;
    if (this.assign(order, 0, start, crew)) return crew;
    return this.tried > this.until ? "given up" : null;
  }

  private assign(order: readonly number[], k: number, start: Int32Array, crew: Int32Array): boolean {
    if (k === order.length) return true;
    const task = order[k]!;
    return this.seat(this.project.seats[task]!, 0, 0, this.freeAt(start[task]!, order, k, start, crew), 0, (bits) => {
      crew[task] = bits;
      return this.leavesEnough(order, k, start, crew) && this.assign(order, k + 1, start, crew);
    });
  }

  /** Workers whom none of the first so many tasks has at a time. */
  private freeAt(at: number, order: readonly number[], named: number, start: Int32Array, crew: Int32Array): number {
    const { duration, workers } = this.project;
    let free = 2 ** workers - 1;
    for (let i = 0; i < named; i++) {
      const task = order[i]!;
      if (start[task]! + duration[task]! > at) free &= ~crew[task]!;
    }
    return free;
  }

  /** While the k-th task runs, whatever else begins can still be filled, by each set of skills (Hall). */
  private leavesEnough(order: readonly number[], k: number, start: Int32Array, crew: Int32Array): boolean {
    const { duration, amounts, pools } = this.project;
    const until = start[order[k]!]! + duration[order[k]!]!;
    for (let next = k + 1; next < order.length && start[order[next]!]! < until; next++) {
      const at = start[order[next]!]!;
      if (next + 1 < order.length && start[order[next + 1]!] === at) continue;
      const free = this.freeAt(at, order, k + 1, start, crew);
      for (let s = 0; s < pools.length; s++) {
        let asked = 0;
        for (let i = k + 1; i <= next; i++) if (start[order[i]!]! + duration[order[i]!]! > at) asked += amounts[s]![order[i]!]!;
        if (asked > bitsIn(free & pools[s]!)) return false;
      }
    }
    return true;
  }

  /** Every way to fill the seats from one on, up to workers with the same skills, until one is taken. */
  private seat(seats: Int32Array, at: number, lowest: number, free: number, bits: number, take: (bits: number) => boolean): boolean {
    if (this.tried++ > this.until) return false;
    if (at === seats.length) return take(bits);
    // Seats of one skill are alike: kinds are taken for them in order.
    const from = at > 0 && seats[at] === seats[at - 1] ? lowest : 0;
    for (let kind = from; kind < this.kinds.length; kind++) {
      const { bits: own, skills } = this.kinds[kind]!;
      const there = own & free & ~bits;
      if (there === 0 || ((skills >> seats[at]!) & 1) === 0) continue;
      if (this.seat(seats, at + 1, kind, free, bits | (there & -there), take)) return true;
    }
    return false;
  }
}
