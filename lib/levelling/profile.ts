/** Minutes that share one part of the profile: a day. */
const PART = 1440;
const NEVER = 2 ** 30;

/** A step function inside one part of time: `used[i]` from `times[i]` on. */
interface Part {
  readonly times: number[];
  readonly used: number[];
}

/** How many of a machine (or a room) are in use over time: a step function, cut into days so that a change touches little. */
export class Profile {
  private readonly parts: (Part | undefined)[] = [];

  constructor(private readonly count: number) {}

  /** -1 when `more` fit throughout [start, end); else the end of the last stretch where they do not. */
  conflict(start: number, end: number, more: number): number {
    if (start >= end) return -1;
    if (more > this.count) return NEVER;
    const room = this.count - more;
    const first = Math.floor(start / PART);
    for (let p = Math.floor((end - 1) / PART); p >= first; p--) {
      const part = this.parts[p];
      if (part === undefined) continue;
      const { times, used } = part;
      for (let i = segmentOf(times, end - 1); i >= 0; i--) {
        if (used[i]! > room) return this.endOfSegment(p, i);
        if (times[i]! <= start) return -1;
      }
    }
    return -1;
  }

  /** Add `more` (or take away, when negative) over [start, end). */
  add(start: number, end: number, more: number): void {
    if (start >= end) return;
    const last = Math.floor((end - 1) / PART);
    for (let p = Math.floor(start / PART); p <= last; p++) {
      let part = this.parts[p];
      if (part === undefined) {
        while (this.parts.length < p) this.parts.push(undefined);
        part = { times: [p * PART], used: [0] };
        this.parts[p] = part;
      }
      addTo(part, Math.max(start, p * PART), Math.min(end, (p + 1) * PART), (p + 1) * PART, more);
    }
  }

  /** First minute after `at` where the use may change. */
  nextChange(at: number): number {
    for (let p = Math.floor(at / PART); p < this.parts.length; p++) {
      const part = this.parts[p];
      if (part === undefined) continue;
      const i = part.times[0]! > at ? 0 : segmentOf(part.times, at) + 1;
      if (i < part.times.length) return part.times[i]!;
      return (p + 1) * PART;
    }
    return NEVER;
  }

  /** The next minute at which the use differs, over the ends of days. */
  private endOfSegment(p: number, i: number): number {
    const { times, used } = this.parts[p]!;
    if (i + 1 < times.length) return times[i + 1]!;
    const use = used[i]!;
    for (let next = p + 1; ; next++) {
      const part = this.parts[next];
      if (part === undefined || part.used[0] !== use) return next * PART;
      if (part.times.length > 1) return part.times[1]!;
    }
  }
}

function addTo({ times, used }: Part, start: number, end: number, limit: number, more: number): void {
  const first = cut(times, used, start);
  const last = end === limit ? times.length : cut(times, used, end);
  for (let i = first; i < last; i++) used[i] = used[i]! + more;
  if (end < limit) join(times, used, last);
  join(times, used, first);
}

function segmentOf(times: readonly number[], at: number): number {
  let low = 0;
  let high = times.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (times[middle]! <= at) low = middle;
    else high = middle - 1;
  }
  return low;
}

function cut(times: number[], used: number[], at: number): number {
  const i = segmentOf(times, at);
  if (times[i] === at) return i;
  times.splice(i + 1, 0, at);
  used.splice(i + 1, 0, used[i]!);
  return i + 1;
}

/** Stretches used alike become one, so that use taken away leaves no trace. */
function join(times: number[], used: number[], i: number): void {
  if (i === 0 || used[i] !== used[i - 1]) return;
  times.splice(i, 1);
  used.splice(i, 1);
}
