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
export const EXCHANGED = 4;

/** All islands, one after the other in each round. */
export function search(compiled: Compiled, options: LevelOptions): Found {
  const { problem, count } = compiled;
  const islands = [new Island(compiled, options, 0, null)];
  const best = (): Island => islands[bestOf(islands.map(({ standing }) => standing))]!;
  const report = (round: number): void => options.onRound?.(round, measuresOf(problem, best().best.score.plan));
  report(0);
  let rounds = 0;
  while (rounds < options.rounds && count > 0 && !islands.every(({ isSpent }) => isSpent) && !options.stop()) {
    if (rounds === 0) {
      const first = islands[0]!.best.score.plan;
      while (islands.length < ISLANDS) islands.push(new Island(compiled, options, islands.length, first));
    }
    rounds++;
    for (const island of islands) island.round();
    if (rounds % EXCHANGED === 0) exchange(islands);
    report(rounds);
  }
  const { score, rule } = best().best;
  return { plan: score.plan, rule, rounds, schedules: islands.reduce((sum, { schedules }) => sum + schedules, 0) };
}

/** The least standing; of several alike the first. */
export const bestOf = (standings: readonly Standing[]): number =>
  standings.reduce((best, standing, i) => (compareStandings(standing, standings[best]!) < 0 ? i : best), 0);

/** Every island that stands worse goes on from the best plan of all. */
function exchange(islands: readonly Island[]): void {
  const standings = islands.map(({ standing }) => standing);
  const best = bestOf(standings);
  const { plan } = islands[best]!.best.score;
  islands.forEach((island, i) => {
    if (compareStandings(standings[best]!, standings[i]!) < 0) island.adopt(plan);
  });
}
