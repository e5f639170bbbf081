import { during, type PlanTimes } from "./planTimes";
import type { Link } from "./problem";

/** The time from a node's start to its end: worked (for another group: waited for), interrupted by a fitting, or a pause of the calendar. */
export function insideLinks(times: PlanTimes, node: number, group: string): Link[] {
  const placement = times.plan.placed[node]!;
  const own = times.compiled.problem.nodes[node]!;
  const working: Pick<Link, "cause" | "on"> =
    own.group !== group
      ? { cause: "predecessor", on: { node } }
      : own.kind === "fitting"
        ? { cause: "fitting", on: { performer: own.performer } }
        : { cause: "work", on: null };
  const makers = placement.makers.map(({ maker }) => maker);
  const edges = new Set(times.edges(own.kind === "fitting" ? [] : makers, [], placement.start, placement.end));
  for (const { start, end } of placement.stretches) for (const at of [start, end]) edges.add(at);
  const sorted = [...edges].sort((a, b) => a - b);
  const pieces = sorted.slice(0, -1).map((start, i): Link => {
    const piece = { node, start, end: sorted[i + 1]! };
    if (own.kind === "fitting" || placement.stretches.some((stretch) => stretch.start <= start && start < stretch.end))
      return { ...piece, ...working };
    for (const maker of makers) {
      const visit = during(times.visits[maker]!, start);
      if (visit !== undefined) return { ...piece, cause: "fitting", on: { maker, performer: visit.performer!, node: visit.node } };
    }
    return { ...piece, cause: "calendar", on: makers[0] === undefined ? null : { maker: makers[0] } };
  });
  return joinedLinks(pieces);
}

/** Neighbouring links with the same cause become one. */
export function joinedLinks(links: readonly Link[]): Link[] {
  const joined: Link[] = [];
  for (const link of links) {
    const last = joined.at(-1);
    const same =
      last !== undefined && last.end === link.start && last.cause === link.cause && last.node === link.node && sameOn(last, link);
    if (same) joined[joined.length - 1] = { ...last, end: link.end };
    else joined.push(link);
  }
  return joined;
}

const sameOn = (a: Link, b: Link): boolean =>
  a.on?.maker === b.on?.maker && a.on?.machine === b.on?.machine && a.on?.performer === b.on?.performer && a.on?.node === b.on?.node;
