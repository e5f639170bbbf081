import type { Interval } from "#lib/levelling/problem";

/** Sorted, disjoint, without empty ones; neighbours that touch become one. */
export const merged = (intervals: readonly Interval[]): Interval[] => {
  const result: { start: number; end: number }[] = [];
  for (const { start, end } of intervals.filter((one) => one.start < one.end).sort((a, b) => a.start - b.start)) {
    const last = result.at(-1);
    if (last && start <= last.end) last.end = Math.max(last.end, end);
    else result.push({ start, end });
  }
  return result;
};

/** What is in `from` and in none of `taken`. */
export const without = (from: readonly Interval[], taken: readonly Interval[]): Interval[] => {
  const gaps = merged(taken);
  return merged(from).flatMap((whole) => {
    const rest: Interval[] = [];
    let start = whole.start;
    for (const gap of gaps) {
      if (gap.end <= start) continue;
      if (gap.start >= whole.end) break;
      rest.push({ start, end: gap.start });
      start = gap.end;
    }
    rest.push({ start, end: whole.end });
    return rest.filter((one) => one.start < one.end);
  });
};

/** What is in both. */
export const shared = (a: readonly Interval[], b: readonly Interval[]): Interval[] => without(a, without(a, b));

/** Each interval shrunk to whole steps: starts rounded up, ends down. */
export const inSteps = (intervals: readonly Interval[], step: number): Interval[] =>
  merged(intervals)
    .map(({ start, end }) => ({ start: Math.ceil(start / step) * step, end: Math.floor(end / step) * step }))
    .filter((one) => one.start < one.end);

/** Minutes of an interval that lie in sorted, disjoint ones. */
export const minutesWithin = ({ start, end }: Interval, sorted: readonly Interval[]): number => {
  let minutes = 0;
  for (const one of sorted) {
    if (one.start >= end) break;
    minutes += Math.max(0, Math.min(one.end, end) - Math.max(one.start, start));
  }
  return minutes;
};

/** Total minutes of disjoint intervals. */
export const totalMinutes = (intervals: readonly Interval[]): number => intervals.reduce((sum, one) => sum + one.end - one.start, 0);
