import { advance, unitsBefore } from "./clock";
import type { Compiled } from "./compiled";

/** First minute at which the later node of a link may start when the earlier one ends at `end`. */
export function earliestAfter(compiled: Compiled, link: number, end: number): number {
  const { links, clocks } = compiled;
  const lag = links.lag[link]!;
  return links.working[link] === 1 ? advance(clocks.workroom, end, lag) : end + lag;
}

/** Minutes by which the lag between `end` and `start` is greater than the link allows; 0 or less when it is not. */
export function lagTooLong(compiled: Compiled, link: number, end: number, start: number): number {
  const { links, clocks } = compiled;
  const most = links.maxLag[link]!;
  if (most < 0) return 0;
  const lag = links.working[link] === 1 ? unitsBefore(clocks.workroom, start) - unitsBefore(clocks.workroom, end) : start - end;
  return lag - most;
}
