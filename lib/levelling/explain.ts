import { type Compiled, compile } from "./compiled";
import { insideLinks } from "./insideLinks";
import { earliestAfter } from "./lags";
import { ancestorsOf } from "./neighbours";
import { PlanTimes } from "./planTimes";
import type { Due, LateChain, LevellingProblem, Link, Plan } from "./problem";
import { waitingLinks } from "./waitingLinks";

/**
 * Why each late due is late: walk back from its end to whatever fixed each start. The links tile the time from the first
 * release of anything it waits for to its end. Dues without a place are told by `unplaced`, not here.
 */
export function explain(problem: LevellingProblem, plan: Plan, compiled?: Compiled): LateChain[] {
  const late = problem.dues.flatMap((due, index) => {
    const end = plan.placed[due.node]?.end ?? 0;
    return end > due.at ? [{ due, index, minutesLate: end - due.at }] : [];
  });
  if (late.length === 0) return [];
  const times = new PlanTimes(compiled ?? compile(problem), plan);
  return late.map(({ due, index, minutesLate }) => ({ due: index, minutesLate, links: chainOf(times, due) }));
}

function chainOf(times: PlanTimes, due: Due): Link[] {
  const { compiled, plan } = times;
  const { nodes } = compiled.problem;
  const { group } = nodes[due.node]!;
  const backwards: Link[] = [];
  let until = plan.placed[due.node]!.end;
  const origin = [...ancestorsOf(compiled, due.node)].reduce((least, node) => Math.min(least, nodes[node]!.release), until);
  /** Links of [from, until), given in order of time; what reaches past `until` (a negative lag) is cut off. */
  const add = (links: readonly Link[]): void => {
    for (const link of links.toReversed()) {
      const cut = { ...link, start: Math.max(link.start, origin), end: Math.min(link.end, until) };
      if (cut.start < cut.end) backwards.push(cut);
    }
    until = Math.min(until, links[0]?.start ?? until);
  };
  for (let node = due.node; until > origin; ) {
    const { start } = plan.placed[node]!;
    add(insideLinks(times, node, group));
    const { ready, before, end } = readyAt(times, node);
    if (start > ready) add(waitingLinks(times, node, ready));
    if (before < 0) {
      add([{ node, cause: "delivery", start: origin, end: until, on: null }]);
      break;
    }
    if (ready > end) add([{ node, cause: "lag", start: end, end: until, on: { node: before } }]);
    node = before;
  }
  return backwards.reverse();
}

/** When the node could have started, and the predecessor (ended at `end`) that fixed it; `before` is -1 when its release did. */
function readyAt(times: PlanTimes, node: number): { ready: number; before: number; end: number } {
  const { compiled, plan } = times;
  const { links } = compiled;
  let best = { ready: compiled.release[node]!, before: -1, end: 0 };
  for (let i = links.intoFirst[node]!; i < links.intoFirst[node + 1]!; i++) {
    const link = links.into[i]!;
    const before = links.before[link]!;
    const end = plan.placed[before]?.end;
    if (end === undefined) continue;
    const ready = earliestAfter(compiled, link, end);
    if (ready > best.ready || (ready === best.ready && best.before < 0)) best = { ready, before, end };
  }
  return best;
}
