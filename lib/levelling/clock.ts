import type { Interval } from "./problem";

/** Later than any minute of any problem. */
export const NEVER = 2 ** 30;

export interface Rated extends Interval {
  /** Units of work done in one minute. */
  readonly rate: number;
}

/** Working time as an index: prefix sums map a minute of the axis to work done and back, so that calendars cost nothing. */
export interface Clock {
  readonly starts: Int32Array;
  readonly ends: Int32Array;
  readonly rates: Float64Array;
  /** Units before each stretch. */
  readonly before: Float64Array;
  /** End of the unbroken run of stretches each one belongs to. */
  readonly runEnds: Int32Array;
  /** For every 64 minutes: the first stretch that ends after they begin. */
  readonly buckets: Int32Array;
  readonly total: number;
}

/** Index sorted, disjoint stretches; those of rate 0 or no length are left out. */
export function makeClock(stretches: readonly Rated[]): Clock {
  const kept = stretches.filter((stretch) => stretch.end > stretch.start && stretch.rate > 0);
  const count = kept.length;
  const starts = new Int32Array(count);
  const ends = new Int32Array(count);
  const rates = new Float64Array(count);
  const before = new Float64Array(count);
  let total = 0;
  for (let i = 0; i < count; i++) {
    const { start, end, rate } = kept[i]!;
    starts[i] = start;
    ends[i] = end;
    rates[i] = rate;
    before[i] = total;
    total += (end - start) * rate;
  }
  const runEnds = new Int32Array(count);
  for (let i = count - 1; i >= 0; i--) runEnds[i] = i + 1 < count && starts[i + 1] === ends[i] ? runEnds[i + 1]! : ends[i]!;
  const buckets = new Int32Array(count === 0 ? 1 : (ends[count - 1]! >> 6) + 1);
  for (let b = 0, i = 0; b < buckets.length; b++) {
    while (i < count && ends[i]! <= b << 6) i++;
    buckets[b] = i;
  }
  return { starts, ends, rates, before, runEnds, buckets, total };
}

/** First stretch that ends after minute `at`; the number of stretches when there is none. */
export function stretchAt(clock: Clock, at: number): number {
  const bucket = at < 0 ? 0 : at >> 6;
  if (bucket >= clock.buckets.length) return clock.ends.length;
  let i = clock.buckets[bucket]!;
  while (i < clock.ends.length && clock.ends[i]! <= at) i++;
  return i;
}

/** First working minute at or after `at`, or NEVER. */
export function nextWorking(clock: Clock, at: number): number {
  const i = stretchAt(clock, at);
  if (i === clock.ends.length) return NEVER;
  const start = clock.starts[i]!;
  return Math.max(start, at);
}

/** Units of work done before minute `at`. */
export function unitsBefore(clock: Clock, at: number): number {
  const i = stretchAt(clock, at);
  if (i === clock.ends.length) return clock.total;
  const into = at - clock.starts[i]!;
  return into > 0 ? clock.before[i]! + into * clock.rates[i]! : clock.before[i]!;
}

/** First minute by which `need` units have been done from `at` on, or NEVER. */
export function advance(clock: Clock, at: number, need: number): number {
  if (need <= 0) return at;
  const target = unitsBefore(clock, at) + need;
  if (target > clock.total) return NEVER;
  let low = stretchAt(clock, at);
  const last = clock.ends.length - 1;
  while (low < last && clock.before[low + 1]! < target) low++;
  return clock.starts[low]! + Math.ceil((target - clock.before[low]!) / clock.rates[low]!);
}

/** Working time shared by several clocks, at the slowest of their rates. */
export function sharedClock(clocks: readonly Clock[]): Clock {
  if (clocks.length === 1) return clocks[0]!;
  let shared: Rated[] = listOf(clocks[0]!);
  for (const clock of clocks.slice(1)) {
    const next: Rated[] = [];
    for (const stretch of shared) {
      for (let i = stretchAt(clock, stretch.start); i < clock.ends.length && clock.starts[i]! < stretch.end; i++) {
        const start = Math.max(stretch.start, clock.starts[i]!);
        const end = Math.min(stretch.end, clock.ends[i]!);
        next.push({ start, end, rate: Math.min(stretch.rate, clock.rates[i]!) });
      }
    }
    shared = next;
  }
  return makeClock(shared);
}

/** The same stretches with every rate multiplied. */
export const scaledClock = (clock: Clock, factor: number): Clock =>
  makeClock(listOf(clock).map((stretch) => ({ ...stretch, rate: stretch.rate * factor })));

function listOf(clock: Clock): Rated[] {
  return Array.from(clock.starts, (start, i) => ({ start, end: clock.ends[i]!, rate: clock.rates[i]! }));
}
