import type { Compiled } from "./compiled";
import { ISLANDS, Island } from "./island";
import { measuresOf } from "./measures";
import type { LevelOptions, Plan } from "./problem";
import { compareStandings, type Standing } from "./ruin/standing";

export interface Found {
  readonly plan: Plan;
  readonly rule: string;
  readonly rounds: number;
  readonly schedules: number;
}

/** Rounds after which the islands hear of the best plan of all. */
const EXCHANGED = 4;

/** A search that runs beside others: in this thread, or in another while this one does its own. */
export interface Beside {
  /** Begins a round, and may be back before it is done. */
  begin(): void;
  /** Waits for the end of the round. */
  end(): void;
  readonly standing: Standing;
  readonly plan: Plan;
  readonly rule: string;
  readonly schedules: number;
  readonly isSpent: boolean;
  adopt(plan: Plan): void;
}

/** All islands, one after the other in each round, or those elsewhere meanwhile: the answer is the same. */
export function search(compiled: Compiled, options: LevelOptions, elsewhere?: (island: number, first: Plan) => Beside): Found {
  const { problem, count } = compiled;
  const islands: Beside[] = [new Island(compiled, options, 0, null)];
  const best = (): Beside => islands[bestOf(islands.map(({ standing }) => standing))]!;
  const report = (round: number): void => options.onRound?.(round, measuresOf(problem, best().plan));
  report(0);
  let rounds = 0;
  while (rounds < options.rounds && count > 0 && !islands.every(({ isSpent }) => isSpent) && !options.stop()) {
    if (rounds === 0) {
      const first = islands[0]!.plan;
      for (let i = 1; i < ISLANDS; i++) islands.push(elsewhere?.(i, first) ?? new Island(compiled, options, i, first));
    }
    rounds++;
    for (const island of islands.toReversed()) island.begin();
    for (const island of islands) island.end();
    if (rounds % EXCHANGED === 0) exchange(islands);
    report(rounds);
  }
  const { plan, rule } = best();
  return { plan, rule, rounds, schedules: islands.reduce((sum, { schedules }) => sum + schedules, 0) };
}

/** The least standing; of several alike the first. */
const bestOf = (standings: readonly Standing[]): number =>
  standings.reduce((best, standing, i) => (compareStandings(standing, standings[best]!) < 0 ? i : best), 0);

/** Every island that stands worse goes on from the best plan of all. */
function exchange(islands: readonly Beside[]): void {
  const standings = islands.map(({ standing }) => standing);
  const best = bestOf(standings);
  const { plan } = islands[best]!;
  islands.forEach((island, i) => {
    if (compareStandings(standings[best]!, standings[i]!) < 0) island.adopt(plan);
  });
}
