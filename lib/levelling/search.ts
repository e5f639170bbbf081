import type { Candidate } from "./candidate";
import type { Compiled } from "./compiled";
import { measuresOf } from "./measures";
import { changed } from "./moves";
import { PlanMaker } from "./planMaker";
import type { LevelOptions } from "./problem";
import { Chance } from "./random";
import { PLAIN } from "./rules";
import { compareScores, type Score } from "./score";

export interface Found {
  readonly best: Candidate;
  readonly rounds: number;
  readonly schedules: number;
}

/** Schedules in one round of improvement. */
const PER_ROUND = 24;
/** Rounds without a better plan after which the search goes back to the best. */
const PATIENCE = 8;
/** Good plans kept to be mixed. */
const POOL = 20;

/** Round 0: the kept plan and the plain rule. Round 1: the other rules. Then rounds of changes to the order and the choices. */
export function search(compiled: Compiled, options: LevelOptions): Found {
  const maker = new PlanMaker(compiled, options.schedules ?? Number.POSITIVE_INFINITY);
  const chance = new Chance(options.seed);
  const report = (round: number): void => options.onRound?.(round, measuresOf(compiled.problem, best.score.plan));

  let best = maker.byRule(PLAIN);
  const { current } = compiled.problem;
  if (current !== null) best = better(maker.keeping(current), best);
  report(0);

  let rounds = 0;
  let idle = 0;
  let at = best;
  let pool: Candidate[] = [best];
  while (rounds < options.rounds && !maker.spent && !options.stop()) {
    rounds++;
    const before = best;
    const take = (next: Candidate): void => {
      if (acceptable(next.score, at.score, best.score, chance)) at = next;
      best = better(next, best);
      pool = withOne(pool, next);
    };
    if (rounds === 1) {
      for (const next of maker.byRules(best.score.finish)) take(next);
      for (const next of maker.withOvertime(best)) take(next);
      at = best;
    } else {
      for (const end = maker.schedules + PER_ROUND; maker.schedules < end && !maker.spent; ) {
        const next = maker.from(changed(compiled, chance.next() < 0.35 ? pool[chance.below(pool.length)]! : at, pool, chance));
        take(next);
        if (!maker.spent && worthJustifying(compiled, next.score, at.score, chance)) for (const after of maker.justified(next)) take(after);
      }
    }
    idle = best === before ? idle + 1 : 0;
    if (idle % PATIENCE === PATIENCE - 1) at = idle % (2 * PATIENCE) < PATIENCE ? best : pool[chance.below(pool.length)]!;
    report(rounds);
  }
  return { best, rounds, schedules: maker.schedules };
}

const better = (candidate: Candidate, best: Candidate): Candidate => (compareScores(candidate.score, best.score) < 0 ? candidate : best);

/** As good as where the search stands, or hardly later than the best plan. */
function acceptable(next: Score, at: Score, best: Score, chance: Chance): boolean {
  if (compareScores(next, at) <= 0) return true;
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
