import { bitsIn, type CrewedProject } from "./crewedProject";

/** Ways of seating tried over all tasks before a plan is given up. */
const MOST_TRIED = 20_000;

/** Names workers for tasks whose starts are given, with backtracking: nobody works at two tasks at once. */
export class CrewAssignment {
  /** Workers with the same skills, as bits: which of them works makes no difference. */
  private readonly kinds: readonly { readonly bits: number; readonly skills: number }[];
  private tried = 0;

  /** The last plan was given up before every way was tried. */
  get gaveUp(): boolean {
    return this.tried > MOST_TRIED;
  }

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

  /** The workers of each task, as bits; null when no way was found. */
  crews(start: Int32Array): Int32Array | null {
    const { count, duration, seats } = this.project;
    const order = Array.from({ length: count }, (_, task) => task)
      .filter((task) => duration[task]! > 0 && seats[task]!.length > 0)
      .sort((a, b) => start[a]! - start[b]! || seats[b]!.length - seats[a]!.length || a - b);
    const crew = new Int32Array(count);
    this.tried = 0;
    return this.assign(order, 0, start, crew) ? crew : null;
  }

  private assign(order: readonly number[], k: number, start: Int32Array, crew: Int32Array): boolean {
    if (k === order.length) return true;
    const { duration, workers, seats } = this.project;
    const task = order[k]!;
    let free = 2 ** workers - 1;
    for (let i = 0; i < k; i++) {
      const other = order[i]!;
      if (start[other]! + duration[other]! > start[task]!) free &= ~crew[other]!;
    }
    return this.seat([...seats[task]!], 0, 0, free, (bits) => {
      crew[task] = bits;
      return this.assign(order, k + 1, start, crew);
    });
  }

  /** Every way to fill the seats from one on, up to workers with the same skills, until one is taken. */
  private seat(seats: readonly number[], at: number, lowest: number, free: number, take: (bits: number) => boolean, bits = 0): boolean {
    if (this.tried++ > MOST_TRIED) return false;
    if (at === seats.length) return take(bits);
    // Seats of one skill are alike: kinds are taken for them in order.
    const from = at > 0 && seats[at] === seats[at - 1] ? lowest : 0;
    for (let kind = from; kind < this.kinds.length; kind++) {
      const { bits: own, skills } = this.kinds[kind]!;
      const there = own & free & ~bits;
      if (there === 0 || ((skills >> seats[at]!) & 1) === 0) continue;
      if (this.seat(seats, at + 1, kind, free, take, bits | (there & -there))) return true;
    }
    return false;
  }
}
