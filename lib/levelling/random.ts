/** A small seeded source of chance (mulberry32): the same seed gives the same numbers everywhere. */
export class Chance {
  private state: number;

  constructor(seed: number) {
    this.state = seed | 0;
  }

  /** At least 0, below 1. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let t = Math.imul(this.state ^ (this.state >>> 15), 1 | this.state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  }

  /** A whole number from 0 to below `count`. */
  below(count: number): number {
    return Math.floor(this.next() * count);
  }

  /** One of the items with a chance in proportion to its weight. */
  pick(weights: readonly number[]): number {
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    let at = this.next() * total;
    for (let i = 0; i < weights.length; i++) {
      at -= weights[i]!;
      if (at < 0) return i;
    }
    return weights.length - 1;
  }
}
