import type { Compiled } from "./compiled";
import type { Interval, Plan, Stretch } from "./problem";

/** What each maker does in a plan, in order of time. */
export interface Engagement extends Interval {
  /** The task, or for a visit its first fitting. */
  readonly node: number;
  /** Null for a task. */
  readonly performer: number | null;
}

/** Work at one machine: its beginnings and its ends, each in order, with how many were in use before each. */
interface Uses {
  readonly starts: Float64Array;
  readonly ends: Float64Array;
  readonly begun: Float64Array;
  readonly ended: Float64Array;
}

/** A plan arranged by maker, for looking up who was busy when. */
export class PlanTimes {
  readonly tasks: readonly Engagement[][];
  readonly visits: readonly Engagement[][];
  private readonly uses: readonly Uses[];

  constructor(
    readonly compiled: Compiled,
    readonly plan: Plan,
  ) {
    const tasks: Engagement[][] = compiled.problem.makers.map(() => []);
    const visits: Engagement[][] = compiled.problem.makers.map(() => []);
    plan.placed.forEach((placement, node) => {
      if (placement === null || compiled.tasks[node] === null || placement.start === placement.end) return;
      for (const { maker } of placement.makers) tasks[maker]!.push({ start: placement.start, end: placement.end, node, performer: null });
    });
    for (const { fitter, start, end, performer, fittings } of plan.visits)
      visits[fitter]!.push({ start, end, node: fittings[0]!, performer });
    for (const list of [...tasks, ...visits]) list.sort((a, b) => a.start - b.start);
    this.uses = usesOf(compiled, plan);
    this.tasks = tasks;
    this.visits = visits;
  }

  /** Minutes in [start, end) at which something may change for the makers of `node`, with both ends. */
  edges(makers: readonly number[], machines: readonly number[], start: number, end: number): number[] {
    const edges = new Set([start, end]);
    const add = (at: number): void => {
      if (at > start && at < end) edges.add(at);
    };
    const addAll = (spans: readonly Interval[]): void => {
      for (let i = firstEndingAfter(spans, start); i < spans.length && spans[i]!.start < end; i++) {
        add(spans[i]!.start);
        add(spans[i]!.end);
      }
    };
    for (const maker of makers) {
      addAll(this.compiled.problem.makers[maker]!.calendar);
      addAll(this.tasks[maker]!);
      addAll(this.visits[maker]!);
    }
    for (const machine of machines) {
      const { starts, ends } = this.uses[machine]!;
      for (const times of [starts, ends]) for (let i = upTo(times, start); i < times.length && times[i]! < end; i++) edges.add(times[i]!);
      addAll(this.compiled.problem.machines[machine]!.calendar ?? []);
    }
    return [...edges].sort((a, b) => a - b);
  }

  machineUse(machine: number, at: number): number {
    const { starts, ends, begun, ended } = this.uses[machine]!;
    return begun[upTo(starts, at)]! - ended[upTo(ends, at)]!;
  }

  /** Is the maker at work by the calendar, in overtime or not? */
  works(maker: number, at: number, overtime: boolean): boolean {
    const stretch: Stretch | undefined = during(this.compiled.problem.makers[maker]!.calendar, at);
    return stretch !== undefined && stretch.speed > 0 && (overtime || !stretch.overtime);
  }
}

function usesOf({ problem, tasks }: Compiled, { placed }: Plan): Uses[] {
  const uses: { at: number; count: number; sign: 1 | -1 }[][] = problem.machines.map(() => []);
  placed.forEach((placement, node) => {
    if (placement === null || placement.start === placement.end) return;
    for (const { machine, count } of tasks[node]?.machines ?? [])
      uses[machine]!.push({ at: placement.start, count, sign: 1 }, { at: placement.end, count, sign: -1 });
  });
  return uses.map((list) => {
    const sorted = list.sort((a, b) => a.at - b.at);
    const [starts, begun] = summed(sorted.filter(({ sign }) => sign === 1));
    const [ends, ended] = summed(sorted.filter(({ sign }) => sign === -1));
    return { starts, ends, begun, ended };
  });
}

function summed(uses: readonly { readonly at: number; readonly count: number }[]): [times: Float64Array, before: Float64Array] {
  const before = new Float64Array(uses.length + 1);
  uses.forEach(({ count }, i) => {
    before[i + 1] = before[i]! + count;
  });
  return [Float64Array.from(uses, ({ at }) => at), before];
}

/** How many of the sorted times are at or before `at`. */
function upTo(times: Float64Array, at: number): number {
  let low = 0;
  let high = times.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (times[middle]! <= at) low = middle + 1;
    else high = middle;
  }
  return low;
}

function firstEndingAfter(spans: readonly Interval[], at: number): number {
  let low = 0;
  let high = spans.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (spans[middle]!.end <= at) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The one of sorted, disjoint spans that holds this minute. */
export function during<T extends Interval>(spans: readonly T[], at: number): T | undefined {
  const span = spans[firstEndingAfter(spans, at)];
  return span !== undefined && span.start <= at ? span : undefined;
}

/** The first of sorted, disjoint spans that begins after this minute. */
export function following<T extends Interval>(spans: readonly T[], at: number): T | undefined {
  const i = firstEndingAfter(spans, at);
  return spans[i] !== undefined && spans[i].start <= at ? spans[i + 1] : spans[i];
}
