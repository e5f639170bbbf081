/** Sorted, disjoint spans of time that are taken, each with what takes it. */
export class Busy {
  readonly starts: number[] = [];
  readonly ends: number[] = [];
  readonly ids: number[] = [];

  /** Number of the first span that ends after `at`. */
  firstEndingAfter(at: number): number {
    let low = 0;
    let high = this.ends.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.ends[middle]! <= at) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  isFree(start: number, end: number): boolean {
    const i = this.firstEndingAfter(start);
    return i === this.ends.length || this.starts[i]! >= end;
  }

  add(start: number, end: number, id: number): void {
    const i = this.firstEndingAfter(start);
    this.starts.splice(i, 0, start);
    this.ends.splice(i, 0, end);
    this.ids.splice(i, 0, id);
  }

  remove(start: number): void {
    const i = this.firstEndingAfter(start);
    this.starts.splice(i, 1);
    this.ends.splice(i, 1);
    this.ids.splice(i, 1);
  }

  /** Give the span that starts at `start` another beginning and end. */
  change(start: number, toStart: number, toEnd: number): void {
    const i = this.firstEndingAfter(start);
    this.starts[i] = toStart;
    this.ends[i] = toEnd;
  }
}
