import type { Compiled } from "./compiled";
import { changed } from "./moves";
import { outlookOf } from "./outlook";
import { type Choices, plainChoices } from "./placeNode";
import type { LevelOptions } from "./problem";
import { Chance } from "./random";
import { PLAIN, RULES, type Rule } from "./rules";
import { compareScores, Score } from "./score";
import { serial } from "./serial";

/** A plan in the search: how it was made and how good it is. */
export interface Candidate {
  /** Nodes in the order in which they were placed first. */
  readonly order: Int32Array;
  readonly choices: Choices;
  readonly score: Score;
  readonly rule: string;
}

export interface Found {
  readonly best: Candidate;
  readonly rounds: number;
  readonly schedules: number;
}

/** Schedules in one round of improvement. */
const PER_ROUND = 24;
/** Rounds without a better plan after which the search goes back to the best. */
const PATIENCE = 8;

/** Round 0: the kept plan and the plain rule. Round 1: the other rules. Then rounds of changes to the order and the choices. */
export function search(compiled: Compiled, options: LevelOptions): Found {
  const budget = options.schedules ?? Number.POSITIVE_INFINITY;
  const chance = new Chance(options.seed);
  const outlook = outlookOf(compiled);
  let schedules = 0;
  const make = (keys: Float64Array, choices: Choices, rule: string): Candidate => {
    schedules++;
    const schedule = serial(compiled, keys, choices);
    return { order: inOrderOf(schedule.start, keys), choices, score: new Score(schedule), rule };
  };
  const byRule = (rule: Rule): Candidate =>
    make(
      Float64Array.from({ length: compiled.count }, (_, node) => rule.key(outlook, node)),
      plainChoices(compiled.count),
      rule.name,
    );

  let best = byRule(PLAIN);
  const { current } = compiled.problem;
  if (current !== null) {
    const keys = Float64Array.from({ length: compiled.count }, (_, node) => current.placed[node]?.start ?? compiled.problem.horizon);
    best = better(make(keys, { ...plainChoices(compiled.count), kept: current }, "kept plan"), best);
  }
  const report = (round: number): void => options.onRound?.(round, best.score.measures);
  report(0);

  let rounds = 0;
  let at = best;
  let idle = 0;
  while (rounds < options.rounds && schedules < budget && !options.stop()) {
    rounds++;
    const before = best;
    if (rounds === 1) {
      for (const rule of RULES) if (schedules < budget) best = better(byRule(rule), best);
      at = best;
    } else {
      for (let i = 0; i < PER_ROUND && schedules < budget; i++) {
        const { keys, choices, name } = changed(compiled, at, chance);
        const next = make(keys, choices, name);
        if (acceptable(next.score, at.score, best.score, chance)) at = next;
        best = better(next, best);
      }
    }
    idle = best === before ? idle + 1 : 0;
    if (idle % PATIENCE === PATIENCE - 1) at = best;
    report(rounds);
  }
  return { best, rounds, schedules };
}

const better = (candidate: Candidate, best: Candidate): Candidate => (compareScores(candidate.score, best.score) < 0 ? candidate : best);

/** As good as where the search stands, or hardly later than the best plan. */
function acceptable(next: Score, at: Score, best: Score, chance: Chance): boolean {
  if (compareScores(next, at) <= 0) return true;
  return next.unplaced === best.unplaced && next.lateness > best.lateness && next.lateness <= best.lateness * (1 + 0.01 * chance.next());
}

/** Nodes by start, then by key, then by number; those without a place last. */
function inOrderOf(start: Int32Array, keys: Float64Array): Int32Array {
  const at = (node: number): number => (start[node]! < 0 ? Number.POSITIVE_INFINITY : start[node]!);
  return Int32Array.from(start.keys()).sort((a, b) => (at(a) === at(b) ? keys[a]! - keys[b]! || a - b : at(a) - at(b)));
}
