import { stocksBound } from "../bound";
import { byRules } from "./byRules";
import type { LengthPlan } from "./checkFewest";
import { Columns, generate } from "./columns";
import type { OpenProgram } from "./coverProgram";
import { dive } from "./dive";
import { gathered } from "./fit";
import type { CutJob, CutStocks } from "./job";
import { stocksIn } from "./job";

/** A legal plan, and stocks that no plan can do without. Proved when they are as many. */
export interface Standing {
  readonly plan: readonly CutStocks[];
  readonly bound: number;
}

/**
 * Fewest stocks for a job, better step by step: the first step is a plan by rules of thumb, the last a proved one. Each step is the best
 * plan and bound so far; whoever runs it stops when there is no more time. The same job always takes the same steps.
 */
export function* fewestStocks(job: CutJob, open: OpenProgram): Generator<Standing, Standing> {
  const { settled, left, plans, best } = byRules(job);
  const place = (rest: readonly CutStocks[]) => gathered([...settled, ...rest]);
  let rest = best;
  let bound = stocksBound(
    job.lengths.flatMap((length, at) => Array.from({ length: left[at]! }, () => length)),
    job.stock,
  );
  const standing = (): Standing => ({ plan: place(rest), bound: stocksIn(settled) + bound });
  yield standing();
  if (bound === stocksIn(rest)) return standing();

  const program = open(left);
  try {
    const columns = new Columns(program);
    columns.add(plans.flatMap((plan) => plan.map(({ cuts }) => cuts)));
    for (let solved = false; !solved && bound < stocksIn(rest); ) {
      const enough = bound;
      const root = generate(job, program, columns, { left, fixed: 0, enough });
      for (let step = root.next(); ; step = root.next()) {
        bound = Math.max(bound, step.done ? step.value.bound : step.value);
        yield standing();
        if (step.done) break;
      }
      solved = bound === enough;
    }
    for (let strays = 0; bound < stocksIn(rest); strays++) {
      // Every other dive asks for one stock less than the best plan, for when the bound itself cannot be reached.
      const target = strays % 2 === 0 ? bound : stocksIn(rest) - 1;
      const search = dive({ job, counts: left, program, columns, target }, new Map(), strays);
      for (let step = search.next(); ; step = search.next()) {
        if (step.done && step.value) rest = trimmed(step.value, left);
        yield standing();
        if (step.done) break;
      }
    }
    return standing();
  } finally {
    program.dispose();
  }
}

/** A standing told in the lengths that were asked for. */
export const lengthPlan = (job: CutJob, { plan, bound }: Standing): LengthPlan => ({
  patterns: plan.map(({ cuts, times }) => ({
    count: times,
    cuts: cuts.map(([place, pieces]) => [job.lengths[place]! * job.unit, pieces] as const),
  })),
  bins: stocksIn(plan),
  bound,
});

/** The plan without pieces beyond those asked for. */
const trimmed = (plan: readonly CutStocks[], counts: readonly number[]): readonly CutStocks[] => {
  const left = [...counts];
  return plan.flatMap(({ cuts, times }) =>
    Array.from({ length: times }, () => {
      const kept = cuts.flatMap(([place, count]): [number, number][] => {
        const taken = Math.min(count, left[place]!);
        left[place]! -= taken;
        return taken > 0 ? [[place, taken]] : [];
      });
      return { cuts: kept, times: 1 };
    }),
  );
};
