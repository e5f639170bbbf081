/** A ring of nodes that wait for each other, first named again at the end; null when the graph has none. Unknown names are passed over. */
export const findCycle = (waits: ReadonlyMap<string, readonly string[]>): readonly string[] | null => {
  const done = new Set<string>();
  for (const start of waits.keys()) {
    const cycle = follow(start, [], waits, done);
    if (cycle) return cycle;
  }
  return null;
};

const follow = (
  node: string,
  path: readonly string[],
  waits: ReadonlyMap<string, readonly string[]>,
  done: Set<string>,
): readonly string[] | null => {
  if (done.has(node)) return null;
  const seen = path.indexOf(node);
  if (seen >= 0) return [...path.slice(seen), node];
  for (const on of waits.get(node) ?? []) {
    const cycle = follow(on, [...path, node], waits, done);
    if (cycle) return cycle;
  }
  done.add(node);
  return null;
};
