import type { Chance } from "../random";
import { bitsIn, type CrewedProject } from "./crewedProject";

/** Different orders of taking workers that tasks may have. */
export const TASTES = 32;

/** Serial generation: the tasks of a list one by one, each at the earliest time with a crew of workers who are free for its length. */
export class CrewedPlacer {
  /** Tasks placed so far, over all calls. */
  placed = 0;
  private readonly busy: Int32Array;
  private readonly finish: Int32Array;
  private readonly everybody: number;
  private readonly sitting: Int32Array;
  /** Orders in which workers are taken: first those with the fewest scarce skills first, then others by chance. */
  private readonly tastes: readonly Int32Array[];
  private readonly tried: Uint8Array;

  constructor(
    private readonly project: CrewedProject,
    chance: Chance,
  ) {
    const { horizon, count, workers, having, seats, duration } = project;
    this.busy = new Int32Array(horizon + 1);
    this.finish = new Int32Array(count);
    this.everybody = 2 ** workers - 1;
    const most = seats.reduce((greatest, own) => Math.max(greatest, own.length), 0);
    this.sitting = new Int32Array(most);
    this.tried = new Uint8Array(most);
    const asked = new Float64Array(having.length);
    seats.forEach((own, task) => {
      for (const skill of own) asked[skill] = asked[skill]! + duration[task]!;
    });
    const scarcity = Float64Array.from({ length: workers }, (_, worker) =>
      having.reduce((sum, bits, skill) => ((bits >> worker) & 1 ? sum + asked[skill]! / bitsIn(bits) : sum), 0),
    );
    this.tastes = Array.from({ length: TASTES }, (_, taste) => {
      const noise = Float64Array.from(scarcity, (each) => (taste === 0 ? each : each * (0.2 + chance.next())));
      return Int32Array.from(noise.keys()).sort((a, b) => noise[a]! - noise[b]! || a - b);
    });
  }

  /** Fills `start` and `crew` (bits), each crew by the taste of its task; the time all is done. */
  place(side: 0 | 1, list: Int32Array, taste: Uint8Array, start: Int32Array, crew: Int32Array): number {
    const { busy, finish, everybody } = this;
    const { duration, tests } = this.project;
    const { first, before } = this.project.sides[side];
    busy.fill(0);
    let end = 0;
    for (let k = 0; k < list.length; k++) {
      const task = list[k]!;
      let t = 0;
      for (let i = first[task]!, to = first[task + 1]!; i < to; i++) {
        const done = finish[before[i]!]!;
        if (done > t) t = done;
      }
      const length = duration[task]!;
      const test = tests[task]!;
      this.placed++;
      crew[task] = 0;
      if (length > 0 && test.seats.length > 0) {
        for (; ; t++) {
          let taken = 0;
          for (let u = t; u < t + length; u++) taken |= busy[u]!;
          const free = everybody & ~taken;
          if (!suffices(free, test)) continue;
          const bits = this.crewOf(task, free, this.tastes[taste[task]!]!);
          crew[task] = bits;
          for (let u = t; u < t + length; u++) busy[u] = busy[u]! | bits;
          break;
        }
      }
      start[task] = t;
      finish[task] = t + length;
      if (t + length > end) end = t + length;
    }
    return end;
  }

  /** Of the free workers those most wanted that can fill the seats together. */
  private crewOf(task: number, free: number, wanted: Int32Array): number {
    const seats = this.project.seats[task]!;
    const { sitting } = this;
    sitting.fill(-1);
    let bits = 0;
    for (let i = 0, left = seats.length; left > 0; i++) {
      const worker = wanted[i]!;
      if (((free >> worker) & 1) === 0) continue;
      this.tried.fill(0);
      if (!this.sit(seats, worker)) continue;
      bits |= 1 << worker;
      left--;
    }
    return bits;
  }

  private sit(seats: Int32Array, worker: number): boolean {
    const { having } = this.project;
    const { sitting, tried } = this;
    for (let seat = 0; seat < seats.length; seat++) {
      if (tried[seat] === 1 || ((having[seats[seat]!]! >> worker) & 1) === 0) continue;
      tried[seat] = 1;
      if (sitting[seat]! < 0 || this.sit(seats, sitting[seat]!)) {
        sitting[seat] = worker;
        return true;
      }
    }
    return false;
  }

  /** The worker of each seat of a task, for a crew that can fill them. */
  seated(task: number, crew: number): number[] {
    const seats = this.project.seats[task]!;
    this.crewOf(task, crew, this.tastes[0]!);
    return [...this.sitting.subarray(0, seats.length)];
  }
}

/** Hall's theorem: the free workers can fill the seats when for each set of skills enough of them have one of it. */
export function suffices(free: number, test: { readonly workers: Int32Array; readonly seats: Int32Array }): boolean {
  const { workers, seats } = test;
  for (let i = 0; i < seats.length; i++) if (bitsIn(free & workers[i]!) < seats[i]!) return false;
  return true;
}
