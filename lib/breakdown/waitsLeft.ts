import type { Wait } from "#lib/constructions/construction";

interface Waiting {
  readonly code: string;
  readonly waitsFor: readonly Wait[];
}

/** Waits of the nodes that are kept: one that waits for a node that fell away waits for whatever that one waited for. */
export const waitsLeft = (nodes: readonly Waiting[], kept: ReadonlySet<string>): ReadonlyMap<string, readonly Wait[]> => {
  const all = new Map(nodes.map((node) => [node.code, node.waitsFor]));
  const left = (waits: readonly Wait[]): readonly Wait[] =>
    waits.flatMap((wait) => (kept.has(wait.on) ? [wait] : left(all.get(wait.on) ?? [])));
  return new Map([...kept].map((code) => [code, longest(left(all.get(code) ?? []))]));
};

/** One wait for each node and kind of lag: the longest. */
const longest = (waits: readonly Wait[]): readonly Wait[] => {
  const found = new Map<string, Wait>();
  for (const wait of waits) {
    const key = `${wait.on} ${wait.lagKind}`;
    const other = found.get(key);
    if (!other || other.lagMinutes < wait.lagMinutes) found.set(key, wait);
  }
  return [...found.values()];
};
