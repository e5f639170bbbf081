/** How many of a machine (or a room) are in use over time: a step function. */
export class Profile {
  private readonly times: number[] = [0];
  private readonly used: number[] = [0];

  constructor(private readonly count: number) {}

  /** -1 when `more` fit throughout [start, end); else the end of the last part where they do not. */
  conflict(start: number, end: number, more: number): number {
    if (start >= end) return -1;
    if (more > this.count) return 2 ** 30;
    const room = this.count - more;
    for (let i = this.segmentOf(end - 1); i >= 0; i--) {
      if (this.used[i]! > room) return i + 1 < this.times.length ? this.times[i + 1]! : 2 ** 30;
      if (this.times[i]! <= start) break;
    }
    return -1;
  }

  /** Add `more` (or take away, when negative) over [start, end). */
  add(start: number, end: number, more: number): void {
    if (start >= end) return;
    const first = this.cut(start);
    const last = this.cut(end);
    for (let i = first; i < last; i++) this.used[i] = this.used[i]! + more;
    this.join(last);
    this.join(first);
  }

  /** First minute after `at` where the use changes. */
  nextChange(at: number): number {
    return this.times[this.segmentOf(at) + 1] ?? 2 ** 30;
  }

  private segmentOf(at: number): number {
    let low = 0;
    let high = this.times.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.times[middle]! <= at) low = middle;
      else high = middle - 1;
    }
    return low;
  }

  /** Parts used alike become one, so that use taken away leaves no trace. */
  private join(i: number): void {
    if (i === 0 || this.used[i] !== this.used[i - 1]) return;
    this.times.splice(i, 1);
    this.used.splice(i, 1);
  }

  private cut(at: number): number {
    const i = this.segmentOf(at);
    if (this.times[i] === at) return i;
    this.times.splice(i + 1, 0, at);
    this.used.splice(i + 1, 0, this.used[i]!);
    return i + 1;
  }
}
