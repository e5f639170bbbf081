import { workedIn } from "../planOf";
import type { Interval } from "../problem";
import type { Schedule } from "../schedule";

interface Share {
  readonly cell: number;
  readonly minutes: number;
}

const NOTHING: readonly Share[] = [];

/** The measures of a schedule, kept up to date node by node as it changes: the same figures as `measuresOf` gives for the whole plan. */
export class Tally {
  unplaced = 0;
  lateness = 0;
  overtime = 0;
  moved = 0;
  /** Sum of all ends: of plans alike in all else, the one that has things done sooner. */
  ends = 0;
  /** Sum over makers and weeks, in millionths. */
  unevenness = 0;
  /** Minutes worked by maker and week. */
  readonly worked: Float64Array;
  /** Normal minutes, an hour at least. */
  readonly free: Float64Array;
  readonly weeks: number;
  /** Weight x minutes late of each node's dues. */
  readonly late: Float64Array;
  private readonly over: Float64Array;
  private readonly endOf: Float64Array;
  private readonly away: Uint8Array;
  private readonly missing: Uint8Array;
  private readonly shares: (readonly Share[])[];
  private readonly duesOf: (readonly { readonly at: number; readonly weight: number }[] | undefined)[] = [];
  private readonly overtimeOf: readonly (readonly Interval[])[];

  constructor(private readonly schedule: Schedule) {
    const { problem, count } = schedule.compiled;
    const { makers, dues, horizon } = problem;
    this.weeks = this.weekOf(horizon) + 2;
    this.worked = new Float64Array(makers.length * this.weeks);
    this.free = new Float64Array(makers.length * this.weeks);
    this.late = new Float64Array(count);
    this.over = new Float64Array(count);
    this.endOf = new Float64Array(count);
    this.away = new Uint8Array(count);
    this.missing = new Uint8Array(count);
    this.shares = new Array<readonly Share[]>(count).fill(NOTHING);
    for (const due of dues) this.duesOf[due.node] = [...(this.duesOf[due.node] ?? []), due];
    this.overtimeOf = makers.map(({ calendar }) => calendar.filter(({ overtime }) => overtime));
    makers.forEach(({ calendar }, maker) => {
      for (const { start, end, overtime } of calendar)
        if (!overtime) for (const { cell, minutes } of this.split(maker, start, end)) this.free[cell] = this.free[cell]! + minutes;
    });
    for (let cell = 0; cell < this.free.length; cell++) this.free[cell] = Math.max(60, this.free[cell]!);
    for (let node = 0; node < count; node++) this.count(node);
  }

  /** Count these nodes where they stand now instead of where they stood. */
  update(nodes: Iterable<number>): void {
    for (const node of nodes) this.count(node);
  }

  weekOf(at: number): number {
    const { minutes, offset } = this.schedule.compiled.problem.week;
    return Math.floor((at - offset) / minutes) + 1;
  }

  private count(node: number): void {
    const { schedule } = this;
    const missing = schedule.unplaced[node] === null ? 0 : 1;
    this.unplaced += missing - this.missing[node]!;
    this.missing[node] = missing;
    const end = Math.max(0, schedule.end[node]!);
    this.ends += end - this.endOf[node]!;
    this.endOf[node] = end;
    const late = this.latenessOf(node);
    this.lateness += late - this.late[node]!;
    this.late[node] = late;
    const moved = this.isMoved(node) ? 1 : 0;
    this.moved += moved - this.away[node]!;
    this.away[node] = moved;
    for (const { cell, minutes } of this.shares[node]!) this.load(cell, -minutes);
    const stretches = this.stretchesOf(node);
    const crew = schedule.crew[node]!;
    const shares =
      stretches.length === 0 ? NOTHING : crew.flatMap(({ maker }) => stretches.flatMap(({ start, end }) => this.split(maker, start, end)));
    for (const { cell, minutes } of shares) this.load(cell, minutes);
    this.shares[node] = shares;
    const over = schedule.overtime[node] === 0 ? 0 : crew.reduce((sum, { maker }) => sum + shared(this.overtimeOf[maker]!, stretches), 0);
    this.overtime += over - this.over[node]!;
    this.over[node] = over;
  }

  overtimeIn(node: number): number {
    return this.over[node]!;
  }

  private latenessOf(node: number): number {
    const dues = this.duesOf[node];
    if (dues === undefined) return 0;
    const { schedule } = this;
    const end = schedule.isPlaced(node) ? schedule.end[node]! : schedule.compiled.problem.horizon;
    return dues.reduce((sum, { at, weight }) => sum + weight * Math.max(0, end - at), 0);
  }

  private isMoved(node: number): boolean {
    const { schedule } = this;
    const kept = schedule.compiled.problem.current?.placed[node];
    if (!kept) return false;
    const crew = schedule.crew[node]!;
    return (
      !schedule.isPlaced(node) ||
      Math.floor(kept.start / 1440) !== Math.floor(schedule.start[node]! / 1440) ||
      kept.makers.length !== crew.length ||
      kept.makers.some(({ maker }, i) => maker !== crew[i]!.maker)
    );
  }

  private stretchesOf(node: number): readonly Interval[] {
    const { schedule } = this;
    const crew = schedule.crew[node]!;
    if (!schedule.isPlaced(node) || crew.length === 0) return [];
    const start = schedule.start[node]!;
    const end = schedule.end[node]!;
    if (schedule.compiled.fittings[node]) return end > start ? [{ start, end }] : [];
    return workedIn(schedule.compiled, schedule.appointments, node, start, end, crew, schedule.overtime[node] === 1);
  }

  private load(cell: number, minutes: number): void {
    const before = this.squared(cell);
    this.worked[cell] = this.worked[cell]! + minutes;
    this.unevenness += this.squared(cell) - before;
  }

  private squared(cell: number): number {
    return Math.round((this.worked[cell]! / this.free[cell]!) ** 2 * 1e6);
  }

  /** A stretch of one maker, week by week. */
  private split(maker: number, start: number, end: number): Share[] {
    const { minutes: length, offset } = this.schedule.compiled.problem.week;
    const shares: Share[] = [];
    for (let at = start; at < end; ) {
      const week = this.weekOf(at);
      const next = Math.min(end, week * length + offset);
      shares.push({ cell: maker * this.weeks + week, minutes: next - at });
      at = next;
    }
    return shares;
  }
}

/** Minutes that two lists of disjoint spans have in common. */
function shared(a: readonly Interval[], b: readonly Interval[]): number {
  let minutes = 0;
  for (const one of a) for (const other of b) minutes += Math.max(0, Math.min(one.end, other.end) - Math.max(one.start, other.start));
  return minutes;
}
