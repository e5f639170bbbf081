import type { WallMinute } from "#lib/calendar/plainDate";
import { textWidth } from "./textFit";
import type { TimelineDays } from "./timelineDays";

export interface Span {
  readonly start: WallMinute;
  readonly end: WallMinute;
}

/** A task of one maker, as the timeline is told of it. */
export interface TimelineTask {
  readonly key: string;
  readonly row: number;
  /** Garment numbers, drawn above; and the work, drawn below. */
  readonly number: string;
  /** The number without its letters, for a narrow bar. */
  readonly short: string;
  readonly name: string;
  /** When it is worked, in order. */
  readonly stretches: readonly Span[];
  /** Parts of it outside ordinary hours. */
  readonly overtime: readonly Span[];
}

/** One bar: stretches of a task that nothing else comes between. */
export interface TimelineBar {
  readonly key: string;
  readonly row: number;
  readonly x: number;
  readonly width: number;
  /** Garment numbers and work, whole. */
  readonly task: string;
  /** The bar that begins its task carries the selvedge. */
  readonly first: boolean;
  /** Where the basting comes from that joins it to the bar before; null for the first. */
  readonly joinedFrom: number | null;
  readonly number: string | null;
  readonly name: string | null;
  readonly overtime: readonly { readonly x: number; readonly width: number }[];
}

const SELVEDGE = 8;
const PAD = 5;
const LETTERS = 12;

/** Makers down, working days across: the bars of every task that falls into the days drawn, by row, then time. */
export const timelineBars = (tasks: readonly TimelineTask[], axis: TimelineDays): readonly TimelineBar[] => {
  const rows = new Map<number, readonly Span[]>();
  for (const task of tasks) rows.set(task.row, [...(rows.get(task.row) ?? []), ...task.stretches]);
  return tasks
    .flatMap((task) => barsOf(task, rows.get(task.row)!, axis))
    .sort((a, b) => a.row - b.row || a.x - b.x || (a.key < b.key ? -1 : 1));
};

const barsOf = (task: TimelineTask, row: readonly Span[], axis: TimelineDays): readonly TimelineBar[] => {
  const parts = joined(task, row, axis)
    .map(({ start, end }, at) => ({ x: axis.xOf(start), right: axis.xOf(end), first: at === 0 }))
    .filter((part) => part.right > part.x);
  const fits = (part: (typeof parts)[number], text: string) =>
    textWidth(text, LETTERS) <= part.right - part.x - PAD - (part.first ? SELVEDGE : 0);
  const both = parts.find((part) => fits(part, task.number) && fits(part, task.name));
  const one = both ?? parts.find((part) => fits(part, task.number)) ?? parts.find((part) => fits(part, task.short));
  return parts.map((part, at) => ({
    key: task.key,
    row: task.row,
    task: `${task.number} ${task.name}`,
    x: part.x,
    width: part.right - part.x,
    first: part.first,
    joinedFrom: at > 0 ? parts[at - 1]!.right : null,
    number: part === one ? (fits(part, task.number) ? task.number : task.short) : null,
    name: part === both ? task.name : null,
    overtime: task.overtime
      .map(({ start, end }) => ({ from: Math.max(part.x, axis.xOf(start)), to: Math.min(part.right, axis.xOf(end)) }))
      .filter(({ from, to }) => to > from)
      .map(({ from, to }) => ({ x: from, width: to - from })),
  }));
};

/** Stretches run together over breaks and nights, unless other work of the row, a weekend or a closed day lies between. */
const joined = (task: TimelineTask, row: readonly Span[], axis: TimelineDays): readonly Span[] => {
  const parts: Span[] = [];
  for (const stretch of task.stretches) {
    const last = parts.at(-1);
    if (last !== undefined && !isParted(last.end, stretch.start, row, axis))
      parts[parts.length - 1] = { start: last.start, end: stretch.end };
    else parts.push(stretch);
  }
  return parts;
};

const isParted = (end: WallMinute, start: WallMinute, row: readonly Span[], axis: TimelineDays): boolean => {
  if (row.some((other) => other.start < start && other.end > end)) return true;
  const from = axis.xOf(end);
  const to = axis.xOf(start);
  return axis.days.some((day) => (day.startsWeek && day.x > from && day.x <= to) || (day.closed !== null && day.x >= from && day.x < to));
};
