import { type Columns, generate } from "./columns";
import { completeWithin } from "./completeWithin";
import type { CoverProgram } from "./coverProgram";
import { bestFit } from "./fit";
import type { CutJob, CutStocks } from "./job";

/** What a dive works on; `target` is the number of stocks it tries to reach. */
export interface Dive {
  readonly job: CutJob;
  readonly counts: readonly number[];
  readonly program: CoverProgram;
  readonly columns: Columns;
  readonly target: number;
}

/** Stocks few enough to try every way to fill them. */
const SMALL = 14;

/**
 * Branch and price by diving: whole parts of the solution are fixed, then one more stock of the way nearest to whole, and columns are
 * generated again for what is left, until a plan of `target` stocks is complete or the bound shows that this branch has none. A way
 * other than the first costs `strays` (limited discrepancy search, Harvey & Ginsberg 1995; from memory). A plan may cut too many
 * pieces of a length.
 */
export function* dive(on: Dive, fixed: ReadonlyMap<number, number>, strays: number): Generator<number, readonly CutStocks[] | null> {
  const { job, columns, program, target } = on;
  program.atLeast(fixed);
  const { solution, bound } = yield* generate(job, program, columns, { left: leftOf(on, fixed), fixed: total(fixed), enough: target });
  if (bound > target) return null;
  const whole = new Map(fixed);
  const parts: { readonly way: number; readonly part: number }[] = [];
  for (const [way, times] of solution.times.entries()) {
    const floor = Math.floor(times + 1e-6);
    if (floor > 0) whole.set(way, floor);
    if (times - floor > 1e-6) parts.push({ way, part: times - floor });
  }
  const left = leftOf(on, whole);
  const stocks = target - total(whole);
  const quick = bestFit(job, left);
  const rest = quick.length <= stocks ? quick : stocks <= SMALL ? completeWithin(job, left, stocks) : null;
  if (rest !== null) return [...[...whole].map(([way, times]) => ({ cuts: columns.ways[way]!, times })), ...rest];
  parts.sort((a, b) => b.part - a.part || a.way - b.way);
  for (const [stray, { way }] of parts.slice(0, strays + 1).entries()) {
    const fixedMore = new Map(whole).set(way, (whole.get(way) ?? 0) + 1);
    const plan = yield* dive(on, fixedMore, strays - stray);
    if (plan !== null) return plan;
    yield bound;
  }
  return null;
}

const total = (fixed: ReadonlyMap<number, number>): number => [...fixed.values()].reduce((sum, times) => sum + times, 0);

const leftOf = ({ counts, columns }: Dive, fixed: ReadonlyMap<number, number>): readonly number[] => {
  const left = [...counts];
  for (const [way, stocks] of fixed) for (const [place, times] of columns.ways[way]!) left[place]! -= times * stocks;
  return left.map((count) => Math.max(0, count));
};
