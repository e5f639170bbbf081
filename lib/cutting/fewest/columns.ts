import type { CoverProgram, CoverSolution } from "./coverProgram";
import type { CutJob, Cuts } from "./job";
import { STOCK_WORTH } from "./worth";
import { worthiest } from "./worthiest";

/** The ways to cut known so far, each once, in the order the programme holds them. */
export class Columns {
  readonly ways: Cuts[] = [];
  private readonly names = new Set<string>();

  constructor(private readonly program: CoverProgram) {}

  /** How many were new. */
  add(ways: readonly Cuts[]): number {
    const fresh = ways.filter((cuts) => {
      const name = cuts.join(" ");
      return !this.names.has(name) && this.names.add(name);
    });
    this.program.add(fresh);
    this.ways.push(...fresh);
    return fresh.length;
  }
}

/** Where generation of columns stands: the solution, and stocks no plan can do without, the fixed ones included. */
export interface Generated {
  readonly solution: CoverSolution;
  readonly bound: number;
}

const COLUMNS_A_ROUND = 40;
const TOLERANCE = 1e-6;

/**
 * Solves the programme with the ways that pay, until it needs no more stocks than `enough`, its bound is above `enough`, or no way pays.
 * `left` are pieces the `fixed` stocks do not give. Yields after each round, for whoever may want to stop.
 */
export function* generate(
  job: CutJob,
  program: CoverProgram,
  columns: Columns,
  { left, fixed, enough }: { readonly left: readonly number[]; readonly fixed: number; readonly enough: number },
): Generator<number, Generated> {
  let bound = fixed;
  while (true) {
    const solution = program.solve();
    if (solution.value <= enough + TOLERANCE) return { solution, bound };
    const worth = Array.from(solution.worth, (value) => Math.max(0, Math.floor(value * STOCK_WORTH)));
    const { most, ways } = worthiest(job, left, worth, COLUMNS_A_ROUND);
    bound = Math.max(bound, fixed + farley(left, worth, most));
    if (bound > enough || bound >= solution.value - TOLERANCE || columns.add(ways) === 0) return { solution, bound };
    yield bound;
  }
}

/**
 * Farley's bound (1990, "A note on bounding a class of linear programming problems, including cutting stock problems"; from memory): no stock
 * can be worth more than `most`, so all pieces need their worth over that. Whole numbers throughout: no rounding can make it too high.
 */
const farley = (left: readonly number[], worth: readonly number[], most: number): number => {
  const all = left.reduce((sum, count, place) => sum + BigInt(count) * BigInt(worth[place]!), 0n);
  return Number((all + BigInt(most) - 1n) / BigInt(most));
};
