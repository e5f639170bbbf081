import type { Compiled } from "./compiled";

/** What can be told of each node before any plan: rough, in minutes on the clock, for priority rules only. */
export interface Outlook {
  /** Elapsed minutes, nights and weekends of an average maker included. */
  readonly length: Float64Array;
  /** Earliest start by release and predecessors. */
  readonly earliest: Float64Array;
  /** Latest end that keeps every due after it. */
  readonly latest: Float64Array;
  /** Least due at or after the node. */
  readonly due: Float64Array;
  /** Weight of all the dues it leads to. */
  readonly weight: Float64Array;
  /** Minutes of the longest way from its start to the end of the graph. */
  readonly tail: Float64Array;
  /** Number of nodes that follow, directly or not (counted along each way, capped). */
  readonly followers: Float64Array;
  /** Share of the machines and crew it takes, times its length. */
  readonly demand: Float64Array;
}

export function outlookOf(compiled: Compiled): Outlook {
  const { problem, count, links, order } = compiled;
  const length = lengths(compiled);
  const earliest = Float64Array.from(compiled.release);
  for (const node of order) {
    for (let i = links.intoFirst[node]!; i < links.intoFirst[node + 1]!; i++) {
      const link = links.into[i]!;
      const before = links.before[link]!;
      earliest[node] = Math.max(earliest[node]!, earliest[before]! + length[before]! + links.lag[link]!);
    }
  }
  const end = order.reduce((most, node) => Math.max(most, earliest[node]! + length[node]!), 0);
  const latest = new Float64Array(count).fill(Math.max(end, problem.horizon));
  const due = new Float64Array(count).fill(problem.horizon);
  const weight = new Float64Array(count);
  for (const one of problem.dues) {
    latest[one.node] = Math.min(latest[one.node]!, one.at);
    due[one.node] = Math.min(due[one.node]!, one.at);
    weight[one.node] = weight[one.node]! + one.weight;
  }
  const tail = length.slice();
  const followers = new Float64Array(count);
  for (let k = order.length - 1; k >= 0; k--) {
    const node = order[k]!;
    for (let i = links.outFirst[node]!; i < links.outFirst[node + 1]!; i++) {
      const link = links.out[i]!;
      const after = links.after[link]!;
      latest[node] = Math.min(latest[node]!, latest[after]! - length[after]! - links.lag[link]!);
      due[node] = Math.min(due[node]!, due[after]!);
      weight[node] = Math.max(weight[node]!, weight[after]!);
      tail[node] = Math.max(tail[node]!, length[node]! + links.lag[link]! + tail[after]!);
      followers[node] = Math.min(1e6, followers[node]! + 1 + followers[after]!);
    }
  }
  return { length, earliest, latest, due, weight, tail, followers, demand: demands(compiled, length) };
}

function lengths(compiled: Compiled): Float64Array {
  const { problem, clocks, skilled } = compiled;
  const stretched = (skill: number, minutes: number): number => {
    let best = Number.POSITIVE_INFINITY;
    for (const maker of skilled[skill]!) {
      const pace = problem.makers[maker]!.pace[skill]!;
      const units = clocks.ofMaker(maker, false).total;
      if (units > 0) best = Math.min(best, (minutes * 1e6 * problem.horizon) / (units * pace));
    }
    return best === Number.POSITIVE_INFINITY ? minutes : Math.max(minutes, best);
  };
  return Float64Array.from(problem.nodes, (node) =>
    node.kind === "fitting"
      ? node.minutes
      : node.crew.reduce((most, { skill }) => Math.max(most, stretched(skill, node.minutes)), node.minutes),
  );
}

function demands(compiled: Compiled, length: Float64Array): Float64Array {
  const { problem, skilled } = compiled;
  return Float64Array.from(problem.nodes, (node, index) => {
    if (node.kind === "fitting") return length[index]! / Math.max(1, skilled[node.fitterSkill]!.length);
    const machines = node.machines.reduce((sum, { machine, count }) => sum + count / Math.max(1, problem.machines[machine]!.count), 0);
    const crew = node.crew.reduce((sum, { skill, count }) => sum + count / Math.max(1, skilled[skill]!.length), 0);
    return length[index]! * (machines + crew);
  });
}
