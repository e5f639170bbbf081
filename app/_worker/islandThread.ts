import { islandOf } from "#lib/levelling/level";
import type { Beside } from "#lib/levelling/search";
import type { IslandAnswer, IslandOrder, IslandRequest } from "./islandElsewhere";

/** Does what the other thread asks, and tells where it stands after each request. */
export function runIsland({ problem, seed, island, first, port, answered }: IslandOrder): void {
  const count = new Int32Array(answered);
  let search: Beside | null = null;
  const handled = (request: IslandRequest): IslandAnswer => {
    search ??= islandOf(problem, { seed, rounds: Number.POSITIVE_INFINITY, stop: () => false }, island, first);
    if (request.kind === "adopt") search.adopt(request.plan);
    else search.begin();
    const { standing, plan, rule, schedules, isSpent } = search;
    return { standing, plan, rule, schedules, isSpent, error: null };
  };
  const NOTHING = { standing: [], plan: first, rule: "", schedules: 0, isSpent: true };
  port.on("message", (request: IslandRequest) => {
    let answer: IslandAnswer;
    try {
      answer = handled(request);
    } catch (error) {
      answer = { ...NOTHING, error: error instanceof Error ? (error.stack ?? error.message) : String(error) };
    }
    port.postMessage(answer);
    Atomics.add(count, 0, 1);
    Atomics.notify(count, 0);
  });
}
