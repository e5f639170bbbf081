import type { TimelineBar } from "./timeline";

/** A place the red thread passes: where the work begins and ends, and the height of its row. */
export interface ThreadStop {
  readonly from: number;
  readonly to: number;
  readonly y: number;
}

/** Where a task enters and leaves the picture; null when it is outside it. */
export const stopOf = (bars: readonly TimelineBar[], key: string, yOf: (row: number) => number): ThreadStop | null => {
  const own = bars.filter((bar) => bar.key === key);
  if (own.length === 0) return null;
  return {
    from: Math.min(...own.map((bar) => bar.x)),
    to: Math.max(...own.map((bar) => bar.x + bar.width)),
    y: yOf(own[0]!.row),
  };
};

/** The red thread through its stops in order: a path, and a knot where it enters each but the first. */
export const thread = (
  stops: readonly ThreadStop[],
): { readonly path: string; readonly knots: readonly { readonly x: number; readonly y: number }[] } => {
  const round = (value: number) => Math.round(value * 10) / 10;
  const links = stops.slice(1).map((stop, at) => {
    const before = stops[at]!;
    const bend = Math.max(12, Math.abs(stop.from - before.to) / 2);
    const points = [before.to, before.y, before.to + bend, before.y, stop.from - bend, stop.y, stop.from, stop.y].map(round);
    return `M${points[0]} ${points[1]}C${points.slice(2).join(" ")}`;
  });
  return { path: links.join(""), knots: stops.slice(1).map((stop) => ({ x: stop.from, y: stop.y })) };
};
