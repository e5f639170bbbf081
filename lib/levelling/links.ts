import type { LevellingProblem } from "./problem";

/** The graph in two compact rows: the links into each node and out of each node. */
export interface Links {
  readonly before: Int32Array;
  readonly after: Int32Array;
  readonly lag: Int32Array;
  /** 1: the lag is counted in the workroom's working time. */
  readonly working: Uint8Array;
  /** -1: no greatest lag. */
  readonly maxLag: Int32Array;
  readonly intoFirst: Int32Array;
  readonly into: Int32Array;
  readonly outFirst: Int32Array;
  readonly out: Int32Array;
}

export function linksOf(problem: LevellingProblem): Links {
  const { precedences, nodes } = problem;
  const count = precedences.length;
  const before = new Int32Array(count);
  const after = new Int32Array(count);
  const lag = new Int32Array(count);
  const working = new Uint8Array(count);
  const maxLag = new Int32Array(count);
  for (let i = 0; i < count; i++) {
    const link = precedences[i]!;
    before[i] = link.before;
    after[i] = link.after;
    lag[i] = link.lag;
    working[i] = link.lagKind === "working" ? 1 : 0;
    maxLag[i] = link.maxLag ?? -1;
  }
  const [intoFirst, into] = grouped(after, nodes.length);
  const [outFirst, out] = grouped(before, nodes.length);
  return { before, after, lag, working, maxLag, intoFirst, into, outFirst, out };
}

function grouped(keys: Int32Array, count: number): [Int32Array, Int32Array] {
  const first = new Int32Array(count + 1);
  for (let i = 0; i < keys.length; i++) first[keys[i]! + 1] = first[keys[i]! + 1]! + 1;
  for (let i = 0; i < count; i++) first[i + 1] = first[i + 1]! + first[i]!;
  const next = first.slice();
  const members = new Int32Array(keys.length);
  for (let i = 0; i < keys.length; i++) {
    const key = keys[i]!;
    members[next[key]!] = i;
    next[key] = next[key]! + 1;
  }
  return [first, members];
}

/** Kahn's order; nodes of a circle come last, as they are. */
export function topological(count: number, links: Links): Int32Array {
  const missing = new Int32Array(count);
  for (const after of links.after) missing[after] = missing[after]! + 1;
  const order = new Int32Array(count);
  let filled = 0;
  for (let node = 0; node < count; node++) if (missing[node] === 0) order[filled++] = node;
  for (let k = 0; k < filled; k++) {
    for (let i = links.outFirst[order[k]!]!; i < links.outFirst[order[k]! + 1]!; i++) {
      const after = links.after[links.out[i]!]!;
      missing[after] = missing[after]! - 1;
      if (missing[after] === 0) order[filled++] = after;
    }
  }
  for (let node = 0; node < count; node++) if (missing[node]! > 0) order[filled++] = node;
  return order;
}
