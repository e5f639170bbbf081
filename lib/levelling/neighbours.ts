import type { Compiled } from "./compiled";

/** The node and everything it waits for. */
export function ancestorsOf(compiled: Compiled, node: number): Set<number> {
  const { links } = compiled;
  const found = new Set([node]);
  for (const one of found) {
    for (let i = links.intoFirst[one]!; i < links.intoFirst[one + 1]!; i++) found.add(links.before[links.into[i]!]!);
  }
  return found;
}

/** All nodes of the chain that `node` belongs to. */
export function groupOf(compiled: Compiled, node: number): number[] {
  const { nodes } = compiled.problem;
  const { group } = nodes[node]!;
  return nodes.flatMap((one, index) => (one.group === group ? [index] : []));
}
