import type { LevellingProblem } from "#lib/levelling/problem";
import type { Prepared } from "#lib/planning/prepared";

/**
 * The problems of productions that share one workroom, and begin in the same week, as one: makers, machines, rooms and performers stand once,
 * nodes one after the other in the order of the productions. Calendars are those of the production that ends last.
 */
export const oneWorkroom = (prepared: readonly [Prepared, ...Prepared[]]): LevellingProblem => {
  const longest = prepared.map(({ problem }) => problem).reduce((a, b) => (b.horizon > a.horizon ? b : a));
  let first = 0;
  const parts = prepared.map(({ problem }) => {
    const offset = first;
    first += problem.nodes.length;
    return {
      nodes: problem.nodes,
      precedences: problem.precedences.map((one) => ({ ...one, before: one.before + offset, after: one.after + offset })),
      dues: problem.dues.map((due) => ({ ...due, node: due.node + offset })),
    };
  });
  return {
    ...longest,
    nodes: parts.flatMap(({ nodes }) => nodes),
    precedences: parts.flatMap(({ precedences }) => precedences),
    dues: parts.flatMap(({ dues }) => dues),
  };
};
