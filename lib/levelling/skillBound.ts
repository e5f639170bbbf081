import { unitsBefore } from "./clock";
import { UNITS } from "./clockStore";
import type { Compiled } from "./compiled";
import { type Pool, poolsOf } from "./skillPools";

export interface SkillBound {
  readonly weightedLateness: number;
  readonly reason: string;
  readonly finish: number;
  readonly finishReason: string;
  /** Least overtime of a plan with nothing late; null when none is proved. */
  readonly overtimeMinutes: number | null;
  readonly overtimeReason: string;
}

/**
 * Hall's argument with hours: work that only the makers of a pool of skills can do, against all the hours they have until a
 * date. When they do not suffice, some due of that work ends no earlier than the minute when they do.
 */
export function skillBound(compiled: Compiled, ends: Float64Array): SkillBound {
  const { problem } = compiled;
  const dates = thinned([...new Set(problem.dues.map(({ at }) => at))].sort((a, b) => a - b));
  const wanted = wantedBy(compiled);
  const byDate = Int32Array.from(wanted.keys()).sort((a, b) => wanted[a]! - wanted[b]! || a - b);
  const best = { weightedLateness: 0, reason: "", finish: 0, finishReason: "", overtimeMinutes: null as number | null, overtimeReason: "" };
  for (const pool of poolsOf(compiled, byDate)) {
    const all = whole(compiled, pool, ends);
    const finish = minuteWhenDone(compiled, pool, all.minutes, all.from);
    if (finish > best.finish && finish < problem.horizon) {
      best.finish = finish;
      best.finishReason = `The end is no earlier because of hours: ${Math.round(all.minutes / 60)} hours ask for ${pool.name}.`;
    }
    let taken = 0;
    let minutes = 0;
    let from = Number.POSITIVE_INFINITY;
    let leading: Uint8Array | null = null;
    for (const date of dates) {
      for (; taken < pool.nodes.length && wanted[pool.nodes[taken]!]! <= date; taken++) {
        minutes += pool.minutes[taken]!;
        from = Math.min(from, earliest(compiled, pool.nodes[taken]!));
      }
      if (taken === 0) continue;
      const hours = Math.round(minutes / 60);
      const overtime = overtimeNeeded(pool, minutes - capacity(pool, "normal", from, date));
      if (overtime > (best.overtimeMinutes ?? 0)) {
        best.overtimeMinutes = overtime;
        best.overtimeReason = `${hours} hours ask for ${pool.name} by one date: without lateness at least ${overtime} minutes of overtime.`;
      }
      if (capacity(pool, "full", from, date) >= minutes) continue;
      const done = minuteWhenDone(compiled, pool, minutes, from);
      leading ??= leadsTo(compiled, pool);
      const led = leading;
      const dues = problem.dues.filter((due) => due.at <= date && led[due.node] === 1);
      const lateness = dues.reduce((low, due) => Math.min(low, due.weight * (done - due.at)), Number.POSITIVE_INFINITY);
      if (done > date && lateness > best.weightedLateness) {
        best.weightedLateness = lateness;
        best.reason = `${hours} hours ask for ${pool.name} by one date, more than there are with all overtime.`;
      }
    }
  }
  return best;
}

/** Any date gives a bound; so many keep the work in proportion to the problem. */
const MOST_DATES = 60;

const thinned = (dates: readonly number[]): readonly number[] => {
  const every = Math.ceil(dates.length / MOST_DATES);
  return dates.filter((_, i) => (dates.length - 1 - i) % every === 0);
};

/** Per node: the earliest date of a due that waits for it; Infinity where none does. */
function wantedBy({ problem, links, order, count }: Compiled): Float64Array {
  const wanted = new Float64Array(count).fill(Number.POSITIVE_INFINITY);
  for (const { node, at } of problem.dues) wanted[node] = Math.min(wanted[node]!, at);
  for (const node of order.toReversed()) {
    for (let i = links.outFirst[node]!; i < links.outFirst[node + 1]!; i++) {
      wanted[node] = Math.min(wanted[node]!, wanted[links.after[links.out[i]!]!]!);
    }
  }
  return wanted;
}

/** Per node: 1 when it is work of the pool or waits for some. */
function leadsTo({ links, order, count }: Compiled, pool: Pool): Uint8Array {
  const leading = new Uint8Array(count);
  for (const node of pool.nodes) leading[node] = 1;
  for (const node of order) {
    for (let i = links.intoFirst[node]!; i < links.intoFirst[node + 1]!; i++) {
      if (leading[links.before[links.into[i]!]!] === 1) leading[node] = 1;
    }
  }
  return leading;
}

/** All work of the pool that can be done at all, and when the first of it may begin. */
function whole(compiled: Compiled, { nodes, minutes }: Pool, ends: Float64Array): { minutes: number; from: number } {
  let sum = 0;
  let from = Number.POSITIVE_INFINITY;
  for (let i = 0; i < nodes.length; i++) {
    if (ends[nodes[i]!]! > compiled.problem.horizon) continue;
    sum += minutes[i]!;
    from = Math.min(from, earliest(compiled, nodes[i]!));
  }
  return { minutes: sum, from };
}

/** Before work may begin, hours are of no use to it. Pinned work may begin whenever it is pinned. */
const earliest = (compiled: Compiled, node: number): number => compiled.problem.nodes[node]!.pin?.start ?? compiled.release[node]!;

/** Standard minutes that the pool can do over [from, to) if each works at their best pace. */
function capacity(pool: Pool, kind: "normal" | "full", from: number, to: number): number {
  let total = 0;
  for (const one of pool.hours) total += (Math.max(0, unitsBefore(one[kind], to) - unitsBefore(one[kind], from)) * one.paces) / UNITS;
  return total;
}

/** First minute by which so many standard minutes can be done; the horizon when never. */
function minuteWhenDone(compiled: Compiled, pool: Pool, minutes: number, from: number): number {
  if (minutes <= 0) return 0;
  let low = from;
  let high = compiled.problem.horizon;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (capacity(pool, "full", from, middle) >= minutes - 1e-6) high = middle;
    else low = middle + 1;
  }
  return Math.min(low, compiled.problem.horizon);
}

function overtimeNeeded(pool: Pool, deficit: number): number {
  if (deficit <= 1e-6) return 0;
  const quickest = pool.hours.reduce((most, { full, best }) => full.rates.reduce((rate, speed) => Math.max(rate, speed * best), most), 0);
  return quickest === 0 ? 0 : Math.ceil((deficit * UNITS) / quickest - 1e-6);
}
