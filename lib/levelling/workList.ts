import { Busy } from "./busy";
import { type Clock, unitsBefore } from "./clock";

/** Minutes that share one greatest gap: 2 to this power, some three days. */
const BUCKET = 12;

/** What a maker does, with the work that fits into each gap: a search for a gap passes over whole weeks that are full. */
export class WorkList extends Busy {
  /** Units of work before each span, since the span before it: in normal hours, and with overtime. */
  private readonly room: readonly [normal: number[], full: number[]] = [[], []];
  /** No gap before a span that starts in the bucket is greater; it may be less. */
  private readonly most: readonly [normal: Float64Array, full: Float64Array];

  constructor(
    private readonly normal: Clock,
    private readonly full: Clock,
    horizon: number,
  ) {
    super();
    const buckets = (horizon >> BUCKET) + 2;
    this.most = [new Float64Array(buckets).fill(-1), new Float64Array(buckets).fill(-1)];
  }

  override add(start: number, end: number, id: number): void {
    const i = this.firstEndingAfter(start);
    this.starts.splice(i, 0, start);
    this.ends.splice(i, 0, end);
    this.ids.splice(i, 0, id);
    this.room[0].splice(i, 0, 0);
    this.room[1].splice(i, 0, 0);
    this.measure(i);
    this.measure(i + 1);
  }

  override remove(start: number): void {
    const i = this.firstEndingAfter(start);
    this.starts.splice(i, 1);
    this.ends.splice(i, 1);
    this.ids.splice(i, 1);
    this.room[0].splice(i, 1);
    this.room[1].splice(i, 1);
    this.measure(i);
  }

  override change(start: number, toStart: number, toEnd: number): void {
    const i = this.firstEndingAfter(start);
    this.starts[i] = toStart;
    this.ends[i] = toEnd;
    this.measure(i);
    this.measure(i + 1);
  }

  /**
   * Number of the first span from the i-th on with a gap before it for so many units; the number of spans when only the time after
   * the last is left, and -1 when there is no such gap before a minute.
   */
  firstGap(from: number, need: number, overtime: boolean, before: number): number {
    const room = this.room[overtime ? 1 : 0];
    const most = this.most[overtime ? 1 : 0];
    const { starts, ends } = this;
    const count = starts.length;
    let i = from;
    while (i < count) {
      if (ends[i - 1]! >= before) return -1;
      let bucket = starts[i]! >> BUCKET;
      if (most[bucket]! < need) {
        do bucket++;
        while (bucket < most.length && most[bucket]! < need && bucket << BUCKET < before);
        i = this.firstStartingAt(bucket << BUCKET, i);
        continue;
      }
      const whole = i === 0 || starts[i - 1]! >> BUCKET < bucket;
      let greatest = -1;
      for (; i < count && starts[i]! >> BUCKET === bucket; i++) {
        const units = room[i]!;
        if (units >= need) return i;
        if (units > greatest) greatest = units;
      }
      if (whole) most[bucket] = greatest;
    }
    return count;
  }

  private firstStartingAt(at: number, from: number): number {
    let low = from;
    let high = this.starts.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.starts[middle]! < at) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  private measure(i: number): void {
    if (i >= this.starts.length) return;
    const start = this.starts[i]!;
    const before = i === 0 ? 0 : this.ends[i - 1]!;
    this.keep(i, 0, this.normal, before, start);
    this.keep(i, 1, this.full, before, start);
  }

  private keep(i: number, kind: 0 | 1, clock: Clock, before: number, start: number): void {
    const units = before >= start ? 0 : unitsBefore(clock, start) - unitsBefore(clock, before);
    this.room[kind][i] = units;
    const bucket = start >> BUCKET;
    if (units > this.most[kind][bucket]!) this.most[kind][bucket] = units;
  }
}
