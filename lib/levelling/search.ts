import { type Aims, aimsOf } from "./aims";
import type { Candidate } from "./candidate";
import type { Compiled } from "./compiled";
import { measuresOf } from "./measures";
import { changed } from "./moves";
import { PlanMaker } from "./planMaker";
import type { LevelOptions } from "./problem";
import { Chance } from "./random";
import { Improver } from "./ruin/improver";
import { PLAIN } from "./rules";
import { compareScores, type Score } from "./score";

export interface Found {
  readonly best: Candidate;
  readonly rounds: number;
  readonly schedules: number;
}

/** Rounds without a better plan after which the search goes back to the best. */
const PATIENCE = 8;
/** Good plans kept to be mixed. */
const POOL = 20;
/** Nodes placed in one round, where a problem is neither small nor very large. */
const NODES_A_ROUND = 20_000;

/**
 * Round 0: the plain rule, or the kept plan repaired. Round 1 of a fresh plan: the other rules. Then, while something is late or in
 * overtime, whole plans with the order or the choices changed; and always the best plan with parts taken out and put back.
 */
export function search(compiled: Compiled, options: LevelOptions): Found {
  const { problem, count } = compiled;
  const maker = new PlanMaker(compiled, options.schedules ?? Number.POSITIVE_INFINITY);
  const chance = new Chance(options.seed);
  const aims = aimsOf(problem, options.order);
  const isWorkroom = problem.makers.some(({ calendar }) => calendar.length > 1);
  const wholePlans = Math.max(2, Math.min(24, Math.round(NODES_A_ROUND / Math.max(1, count))));
  const better = (next: Candidate, than: Candidate): Candidate => (compareScores(next.score, than.score, aims) < 0 ? next : than);
  const report = (round: number): void => options.onRound?.(round, measuresOf(problem, best.score.plan));

  let best = problem.current === null ? maker.byRule(PLAIN) : maker.keeping(problem.current);
  report(0);

  let rounds = 0;
  let idle = 0;
  let at = best;
  let pool: Candidate[] = [best];
  let improver: Improver | null = null;
  while (rounds < options.rounds && count > 0 && !maker.spent && !options.stop()) {
    rounds++;
    const before = best;
    const take = (next: Candidate): void => {
      if (acceptable(next.score, at.score, best.score, chance, aims)) at = next;
      best = better(next, best);
      pool = withOne(pool, next);
    };
    if (rounds === 1 && problem.current === null) {
      for (const next of maker.byRules(best.score.finish)) take(next);
      for (const next of maker.withOvertime(best)) take(next);
      at = best;
    } else {
      if (!isWorkroom || (problem.current === null && isWanting(best.score))) {
        for (const end = maker.schedules + wholePlans; maker.schedules < end && !maker.spent; ) {
          const next = maker.from(changed(compiled, chance.next() < 0.35 ? pool[chance.below(pool.length)]! : at, pool, chance));
          take(next);
          if (!maker.spent && worthJustifying(compiled, next.score, at.score, chance))
            for (const after of maker.justified(next)) take(after);
        }
      }
      if (isWorkroom && !maker.spent) {
        if (improver === null || best.score.schedule !== improver.schedule)
          improver = new Improver(best.score.schedule, best.choices, maker.outlook, chance, aims);
        const improved = improver.improve(Math.min(wholePlans * count, NODES_A_ROUND));
        maker.schedules += Math.ceil(improved.nodes / count);
        if (at === best) at = improved.best;
        best = improved.best;
      }
    }
    idle = best === before ? idle + 1 : 0;
    if (idle % PATIENCE === PATIENCE - 1) at = idle % (2 * PATIENCE) < PATIENCE ? best : pool[chance.below(pool.length)]!;
    report(rounds);
  }
  return { best, rounds, schedules: maker.schedules };
}

const isWanting = ({ unplaced, lateness, overtime }: Score): boolean => unplaced > 0 || lateness > 0 || overtime > 0;

/** As good as where the search stands, or hardly later than the best plan. */
function acceptable(next: Score, at: Score, best: Score, chance: Chance, aims: Aims): boolean {
  if (compareScores(next, at, aims) <= 0) return true;
  return next.unplaced === best.unplaced && next.lateness > best.lateness && next.lateness <= best.lateness * (1 + 0.01 * chance.next());
}

/** Where nobody goes home and only the end counts, justification is known to pay each time; in a workroom only now and then. */
function worthJustifying({ problem }: Compiled, next: Score, at: Score, chance: Chance): boolean {
  const bare =
    problem.dues.length === 1 && problem.performers.length === 0 && problem.makers.every(({ calendar }) => calendar.length === 1);
  if (bare) return next.lateness <= at.lateness * 1.05;
  return next.lateness > 0 && next.lateness <= at.lateness * 1.02 && chance.next() < 0.2;
}

/** The pool with one plan more: the best of different lateness or finish. */
function withOne(pool: readonly Candidate[], next: Candidate): Candidate[] {
  const same = (one: Candidate): boolean => one.score.lateness === next.score.lateness && one.score.finish === next.score.finish;
  if (pool.length >= POOL && next.score.lateness > pool.at(-1)!.score.lateness) return [...pool];
  if (pool.some(same)) return [...pool];
  return [...pool, next].sort((a, b) => a.score.unplaced - b.score.unplaced || a.score.lateness - b.score.lateness).slice(0, POOL);
}
