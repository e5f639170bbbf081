import { Chance } from "../random";
import { byApparentCost } from "./apparentCost";
import { type Sequence, tardiness } from "./sequence";

/** Kicks since the last better order after which the search returns to the best. */
const PATIENCE = 100;

/**
 * Iterated local search over orders of one machine: each descent swaps two jobs or moves one, best of all for each place,
 * until none helps; then a few jobs are moved by chance (the neighbourhoods of Congram, Potts & van de Velde, INFORMS
 * Journal on Computing 14 (2002) 52-67, without their dynamic programme).
 */
export class SequenceSearch {
  best: Int32Array;
  lateness: number;
  /** By the field's counting: jobs between the places changed, over jobs. */
  schedules = 1;
  private readonly chance: Chance;
  private readonly count: number;
  private order: Int32Array;
  /** Minute at which the job of each place begins, and the lateness before it. */
  private readonly begin: Float64Array;
  private readonly before: Float64Array;
  private at: number;
  private idle = 0;

  constructor(
    private readonly sequence: Sequence,
    seed: number,
    private readonly budget: number,
  ) {
    this.chance = new Chance(seed);
    this.count = sequence.minutes.length;
    this.order = byApparentCost(sequence);
    this.begin = new Float64Array(this.count + 1);
    this.before = new Float64Array(this.count + 1);
    this.at = this.measure();
    this.best = this.order.slice();
    this.lateness = this.at;
  }

  get done(): boolean {
    return this.lateness === 0 || this.schedules >= this.budget;
  }

  /** One descent, after a kick but for the first. */
  round(): void {
    const from = this.order.slice();
    const stood = this.at;
    if (this.schedules > 1) this.kick();
    this.descend();
    if (this.at < this.lateness) {
      this.lateness = this.at;
      this.best = this.order.slice();
      this.idle = 0;
    } else if (++this.idle % PATIENCE === 0) {
      this.order = this.best.slice();
      this.at = this.measure();
    } else if (this.at > stood) {
      this.order = from;
      this.at = this.measure();
    }
  }

  private descend(): void {
    for (let better = true; better && !this.done; ) {
      better = false;
      for (let i = 0; i < this.count - 1; i++) for (let j = i + 1; j < this.count && !this.done; j++) better = this.improve(i, j) || better;
    }
  }

  /** The best of swapping the jobs of two places and moving either to the other. */
  private improve(i: number, j: number): boolean {
    const { order } = this;
    const now = this.before[j + 1]! - this.before[i]!;
    if (now === 0) return false;
    const tries = j === i + 1 ? [swap] : [swap, forwards, backwards];
    let best = now;
    let move = null;
    for (const one of tries) {
      one(order, i, j);
      const then = tardiness(this.sequence, order, i, j + 1, this.begin[i]!);
      UNDO.get(one)!(order, i, j);
      if (then < best) {
        best = then;
        move = one;
      }
      this.schedules += (j - i + 1) / this.count;
    }
    if (move === null) return false;
    move(order, i, j);
    this.at = this.measure();
    return true;
  }

  private kick(): void {
    for (let times = 3 + this.chance.below(4); times > 0; times--) {
      const i = this.chance.below(this.count);
      const j = this.chance.below(this.count);
      swap(this.order, i, j);
    }
    this.schedules++;
    this.at = this.measure();
  }

  private measure(): number {
    const { minutes, weight, due } = this.sequence;
    let t = 0;
    let sum = 0;
    for (let k = 0; k < this.count; k++) {
      const job = this.order[k]!;
      this.begin[k] = t;
      this.before[k] = sum;
      t += minutes[job]!;
      if (t > due[job]!) sum += weight[job]! * (t - due[job]!);
    }
    this.begin[this.count] = t;
    this.before[this.count] = sum;
    return sum;
  }
}

type Move = (order: Int32Array, i: number, j: number) => void;

const swap: Move = (order, i, j) => {
  const job = order[i]!;
  order[i] = order[j]!;
  order[j] = job;
};

const forwards: Move = (order, i, j) => {
  const job = order[i]!;
  order.copyWithin(i, i + 1, j + 1);
  order[j] = job;
};

const backwards: Move = (order, i, j) => {
  const job = order[j]!;
  order.copyWithin(i + 1, i, j);
  order[i] = job;
};

const UNDO: ReadonlyMap<Move, Move> = new Map([
  [swap, swap],
  [forwards, backwards],
  [backwards, forwards],
]);
