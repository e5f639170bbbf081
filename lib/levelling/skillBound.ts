import { unitsBefore } from "./clock";
import { UNITS } from "./clockStore";
import type { Compiled } from "./compiled";
import { ancestorsOf } from "./neighbours";
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
  const dates = [...new Set(problem.dues.map(({ at }) => at))].sort((a, b) => a - b);
  const behind = problem.dues.map(({ node }) => ancestorsOf(compiled, node));
  const best = { weightedLateness: 0, reason: "", finish: 0, finishReason: "", overtimeMinutes: null as number | null, overtimeReason: "" };
  for (const pool of poolsOf(compiled)) {
    const all = pool.work.filter(({ node }) => ends[node]! <= problem.horizon);
    const finish = minuteWhenDone(compiled, pool, sum(all), least(compiled, all));
    if (finish > best.finish && finish < problem.horizon) {
      best.finish = finish;
      best.finishReason = `The end is no earlier because of hours: ${Math.round(sum(all) / 60)} hours ask for ${pool.name}.`;
    }
    for (const date of dates) {
      const dues = problem.dues.filter((due, i) => due.at <= date && pool.work.some(({ node }) => behind[i]!.has(node)));
      const needed = new Set(problem.dues.flatMap((due, i) => (due.at <= date ? [...behind[i]!] : [])));
      const work = pool.work.filter(({ node }) => needed.has(node));
      if (work.length === 0) continue;
      const hours = Math.round(sum(work) / 60);
      const from = least(compiled, work);
      const done = minuteWhenDone(compiled, pool, sum(work), from);
      const lateness = dues.reduce((low, due) => Math.min(low, due.weight * (done - due.at)), Number.POSITIVE_INFINITY);
      if (done > date && lateness > best.weightedLateness) {
        best.weightedLateness = lateness;
        best.reason = `${hours} hours ask for ${pool.name} by one date, more than there are with all overtime.`;
      }
      const overtime = overtimeNeeded(pool, sum(work) - capacity(pool, "normal", from, date));
      if (overtime > (best.overtimeMinutes ?? 0)) {
        best.overtimeMinutes = overtime;
        best.overtimeReason = `${hours} hours ask for ${pool.name} by one date: without lateness at least ${overtime} minutes of overtime.`;
      }
    }
  }
  return best;
}

const sum = (work: Pool["work"]): number => work.reduce((total, { minutes }) => total + minutes, 0);

/** Before the first of this work may begin, hours are of no use. Pinned work may begin whenever it is pinned. */
const least = (compiled: Compiled, work: Pool["work"]): number =>
  work.reduce(
    (low, { node }) => Math.min(low, compiled.problem.nodes[node]!.pin?.start ?? compiled.release[node]!),
    Number.POSITIVE_INFINITY,
  );

/** Standard minutes that the pool can do over [from, to) if each works at their best pace. */
function capacity(pool: Pool, kind: "normal" | "full", from: number, to: number): number {
  return pool.makers.reduce(
    (total, maker) => total + (Math.max(0, unitsBefore(maker[kind], to) - unitsBefore(maker[kind], from)) * maker.pace) / UNITS,
    0,
  );
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
  const quickest = pool.makers.reduce(
    (most, maker) => maker.full.rates.reduce((rate, speed) => Math.max(rate, speed * maker.pace), most),
    0,
  );
  return quickest === 0 ? 0 : Math.ceil((deficit * UNITS) / quickest - 1e-6);
}
