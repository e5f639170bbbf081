import { measuresOf } from "../measures";
import type { LevellingProblem, LevelOptions, Placement, Plan } from "../problem";
import type { Special } from "../special";
import { type Sequence, sequenceOf } from "./sequence";
import { SequenceSearch } from "./sequenceSearch";

/** Plan a problem that is one maker's sequence of jobs; null when it is more than that. */
export function levelSequence(problem: LevellingProblem, options: LevelOptions): Special | null {
  const sequence = sequenceOf(problem);
  if (sequence === null) return null;
  const search = new SequenceSearch(sequence, options.seed, options.schedules ?? Number.POSITIVE_INFINITY);
  options.onRound?.(0, measuresOf(problem, planOf(sequence, search.best)));
  let rounds = 0;
  while (rounds < options.rounds && !search.done && !options.stop()) {
    rounds++;
    search.round();
    options.onRound?.(rounds, measuresOf(problem, planOf(sequence, search.best)));
  }
  return {
    plan: planOf(sequence, search.best),
    rounds,
    schedules: Math.ceil(search.schedules),
    rule: rounds === 0 ? "apparent tardiness cost" : "swaps and moves",
    proved: { weightedLateness: 0, finish: 0, reason: "" },
  };
}

function planOf({ minutes, skill }: Sequence, order: Int32Array): Plan {
  const placed = new Array<Placement>(order.length);
  let t = 0;
  for (const job of order) {
    const start = t;
    t += minutes[job]!;
    placed[job] = { start, end: t, makers: [{ maker: 0, skill }], stretches: [{ start, end: t }], overtime: false };
  }
  return { placed, visits: [], unplaced: [] };
}
