import { type Aims, aimsOf } from "./aims";
import type { Candidate } from "./candidate";
import type { Compiled } from "./compiled";
import { restoredCandidate } from "./migrant";
import { changed } from "./moves";
import { PlanMaker } from "./planMaker";
import type { LevelOptions, Plan } from "./problem";
import { Chance } from "./random";
import { Improver } from "./ruin/improver";
import type { Standing } from "./ruin/standing";
import { PLAIN } from "./rules";
import { compareScores, type Score, standingOfScore } from "./score";
import type { Beside } from "./search";
import { Urging } from "./urging";

/** So many searches run beside each other, in one thread or in several: the number is part of what a seed means. */
export const ISLANDS = 2;

/** Rounds without a better plan after which a search goes back to the best. */
const PATIENCE = 8;
/** Good plans kept to be mixed. */
const POOL = 20;
/** Nodes placed by all islands in one round, where a problem is neither small nor very large. */
const NODES_A_ROUND = 20_000;
/** Whole plans without a less late one after which urging allows overtime, and after so many again ends. */
const URGED = 60;
/** Nodes up to which orders are also changed by chance: in larger ones urging is worth more. */
const MOST_CHANGED = 600;

/**
 * One of the searches. Round 0: the plain rule, or the kept plan repaired. Round 1 of a fresh plan: its share of the other rules.
 * Then, while something is late or in overtime, whole plans, urged or with the order and the choices changed; and always the best
 * plan with parts taken out and put back.
 */
export class Island implements Beside {
  private best: Candidate;
  private at: Candidate;
  private pool: Candidate[];
  private rounds = 0;
  private idle = 0;
  private improver: Improver | null = null;
  private urging: Urging | null;
  private urged = 0;
  private leastLate = Number.POSITIVE_INFINITY;
  private readonly maker: PlanMaker;
  private readonly chance: Chance;
  private readonly aims: Aims;
  private readonly isWorkroom: boolean;
  private readonly wholePlans: number;

  /** `first`: the plan that the first island began with; null for the first island. */
  constructor(
    private readonly compiled: Compiled,
    options: LevelOptions,
    private readonly number: number,
    first: Plan | null,
  ) {
    const { problem, count } = compiled;
    this.maker = new PlanMaker(compiled, (options.schedules ?? Number.POSITIVE_INFINITY) / ISLANDS);
    this.chance = new Chance(options.seed + 7919 * number);
    this.aims = aimsOf(problem, options.order);
    this.isWorkroom = problem.makers.some(({ calendar }) => calendar.length > 1);
    this.wholePlans = Math.max(1, Math.min(24, Math.round(NODES_A_ROUND / ISLANDS / Math.max(1, count))));
    this.urging = this.isWorkroom && problem.current === null ? new Urging(compiled, this.maker.outlook, false) : null;
    if (first !== null) this.best = restoredCandidate(compiled, first, PLAIN.name);
    else this.best = problem.current === null ? this.maker.byRule(PLAIN) : this.maker.keeping(problem.current);
    this.at = this.best;
    this.pool = [this.best];
  }

  get plan(): Plan {
    return this.best.score.plan;
  }

  get rule(): string {
    return this.best.rule;
  }

  get schedules(): number {
    return this.maker.schedules;
  }

  get isSpent(): boolean {
    return this.maker.spent;
  }

  /** Of the best plan. */
  get standing(): Standing {
    return standingOfScore(this.best.score, this.aims);
  }

  /** The best plan of another island, which is better than that of this one. */
  adopt(plan: Plan): void {
    this.best = restoredCandidate(this.compiled, plan, "another island's");
    this.at = this.best;
  }

  begin(): void {
    this.round();
  }

  /** A round in this thread is done when it is back. */
  end(): void {}

  private round(): void {
    const { compiled, maker, chance } = this;
    const fresh = compiled.problem.current === null;
    const before = this.best;
    this.rounds++;
    if (this.rounds === 1 && fresh) {
      for (const next of maker.byRules(this.best.score.finish, this.number, ISLANDS)) this.take(next);
      if (this.number === ISLANDS - 1) for (const next of maker.withOvertime(this.best)) this.take(next);
      this.at = this.best;
    } else if (this.rounds % 4 !== 0 && this.urging !== null && this.best.score.lateness > 0) this.urge(this.urging);
    else {
      if (!this.isWorkroom || (fresh && compiled.count <= MOST_CHANGED && isWanting(this.best.score))) this.change();
      if (this.isWorkroom && !maker.spent) this.improve();
    }
    this.idle = this.best === before ? this.idle + 1 : 0;
    if (this.idle % PATIENCE === PATIENCE - 1)
      this.at = this.idle % (2 * PATIENCE) < PATIENCE ? this.best : this.pool[chance.below(this.pool.length)]!;
  }

  private change(): void {
    const { compiled, maker, chance } = this;
    for (const end = maker.schedules + this.wholePlans; maker.schedules < end && !maker.spent; ) {
      const next = maker.from(changed(compiled, chance.next() < 0.35 ? this.anyOfPool() : this.at, this.pool, chance));
      this.take(next);
      if (!maker.spent && worthJustifying(compiled, next.score, this.at.score, chance))
        for (const after of maker.justified(next)) this.take(after);
    }
  }

  private urge(urging: Urging): void {
    const { maker, chance, compiled } = this;
    for (let plan = 0; plan < 2 * this.wholePlans && !maker.spent && this.best.score.lateness > 0; plan++) {
      const next = maker.from(urging.draft);
      this.take(next);
      urging.learn(next, chance);
      const { lateness } = next.score;
      this.urged = lateness < this.leastLate ? 0 : this.urged + 1;
      this.leastLate = Math.min(this.leastLate, lateness);
    }
    if (this.urged < URGED) return;
    this.urged = 0;
    this.leastLate = Number.POSITIVE_INFINITY;
    this.urging = urging.overtime ? null : new Urging(compiled, maker.outlook, true);
  }

  private improve(): void {
    const { best, maker, compiled } = this;
    if (this.improver === null || best.score.schedule !== this.improver.schedule)
      this.improver = new Improver(best.score.schedule, best.choices, maker.outlook, this.chance, this.aims);
    const improved = this.improver.improve(Math.min(this.wholePlans * compiled.count, NODES_A_ROUND / ISLANDS));
    maker.schedules += Math.ceil(improved.nodes / compiled.count);
    if (this.at === best) this.at = improved.best;
    this.best = improved.best;
  }

  private take(next: Candidate): void {
    const { aims, best, at, chance } = this;
    if (acceptable(next.score, at.score, best.score, chance, aims)) this.at = next;
    if (compareScores(next.score, best.score, aims) < 0) this.best = next;
    if (!this.isWorkroom || this.compiled.count <= MOST_CHANGED) this.pool = withOne(this.pool, next);
  }

  private anyOfPool(): Candidate {
    return this.pool[this.chance.below(this.pool.length)]!;
  }
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
