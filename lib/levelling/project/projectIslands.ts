import type { Standing } from "./population";
import type { Project } from "./project";
import { type Migrant, ProjectSearch } from "./projectSearch";

/** So many searches run beside each other, in one thread or in several: the number is part of what a seed means. */
export const PROJECT_ISLANDS = 2;

/** Where an island stands after a round. */
export interface Landing {
  readonly migrant: Migrant;
  readonly schedules: number;
  readonly isDone: boolean;
}

/** One round of one island, which first hears from another; it may run in a thread of its own. */
export type ProjectIsland = (from: Migrant | null) => Landing | Promise<Landing>;

export function projectIsland(project: Project, seed: number, goal: number, budget: number, number: number): ProjectIsland {
  const search = new ProjectSearch(project, seed + 7919 * number, goal, budget / PROJECT_ISLANDS, number);
  return (from) => {
    if (from !== null) search.welcome(from);
    if (!search.done) search.round();
    return { migrant: search.migrant, schedules: search.schedules, isDone: search.done };
  };
}

export interface IslandsFound {
  readonly best: Standing;
  /** No plan is shorter. */
  readonly lower: number;
  readonly rounds: number;
  readonly schedules: number;
}

/** All islands, round by round: at the end of each, every island hears from the next in order. Same seed and rounds, same plan. */
export async function searchIslands(
  islands: readonly ProjectIsland[],
  goal: number,
  rounds: number,
  stop: () => boolean,
): Promise<IslandsFound> {
  let landings = await Promise.all(islands.map((island) => island(null)));
  let round = 1;
  const best = (): Standing => landings.map(({ migrant }) => migrant.best).reduce((a, b) => (b.end < a.end ? b : a));
  const lower = (): number => Math.max(...landings.map(({ migrant }) => migrant.lower));
  while (round < rounds && best().end > Math.max(lower(), goal) && !landings.every(({ isDone }) => isDone) && !stop()) {
    round++;
    const last = landings;
    landings = await Promise.all(islands.map((island, i) => island(last[(i + 1) % last.length]!.migrant)));
  }
  return { best: best(), lower: lower(), rounds: round, schedules: landings.reduce((sum, { schedules }) => sum + schedules, 0) };
}
