import type { Links } from "./links";

/**
 * Nodes tied by greatest lags, with whatever lies between them, form a block: the strongly connected parts of the graph
 * once every link with a greatest lag also runs backwards (Tarjan 1972, without recursion).
 */
export function blocksOf(count: number, links: Links): { blocks: readonly Int32Array[]; blockOf: Int32Array } {
  const neighbours = neighboursOf(count, links);
  const seen = new Int32Array(count).fill(-1);
  const low = new Int32Array(count);
  const open = new Uint8Array(count);
  const blockOf = new Int32Array(count).fill(-1);
  const members: number[][] = [];
  const waiting: number[] = [];
  let clock = 0;
  for (let root = 0; root < count; root++) {
    if (seen[root]! >= 0) continue;
    const path: { node: number; next: number }[] = [{ node: root, next: 0 }];
    while (path.length > 0) {
      const top = path.at(-1)!;
      const { node } = top;
      if (top.next === 0) {
        seen[node] = low[node] = clock++;
        waiting.push(node);
        open[node] = 1;
      }
      const to = neighbours[node]![top.next++];
      if (to !== undefined) {
        if (seen[to]! < 0) path.push({ node: to, next: 0 });
        else if (open[to] === 1) low[node] = Math.min(low[node]!, seen[to]!);
        continue;
      }
      path.pop();
      const parent = path.at(-1)?.node;
      if (parent !== undefined) low[parent] = Math.min(low[parent]!, low[node]!);
      if (low[node] === seen[node]) members.push(popBlock(waiting, node, open, blockOf, members.length));
    }
  }
  return { blocks: members.map((block) => inOrder(block, links, blockOf)), blockOf };
}

function neighboursOf(count: number, links: Links): number[][] {
  const neighbours: number[][] = Array.from({ length: count }, () => []);
  links.before.forEach((before, link) => {
    const after = links.after[link]!;
    neighbours[before]!.push(after);
    if (links.maxLag[link]! >= 0) neighbours[after]!.push(before);
  });
  return neighbours;
}

function popBlock(waiting: number[], root: number, open: Uint8Array, blockOf: Int32Array, block: number): number[] {
  const nodes: number[] = [];
  for (;;) {
    const node = waiting.pop()!;
    open[node] = 0;
    blockOf[node] = block;
    nodes.push(node);
    if (node === root) return nodes;
  }
}

/** Kahn's order inside the block; nodes of a circle are left out, and so can never be placed. */
function inOrder(block: number[], links: Links, blockOf: Int32Array): Int32Array {
  if (block.length === 1) return Int32Array.from(block);
  const own = blockOf[block[0]!]!;
  const missing = new Map(block.map((node) => [node, 0]));
  const eachOut = (node: number, visit: (to: number) => void): void => {
    for (let i = links.outFirst[node]!; i < links.outFirst[node + 1]!; i++) {
      const to = links.after[links.out[i]!]!;
      if (blockOf[to] === own) visit(to);
    }
  };
  for (const node of block) eachOut(node, (to) => missing.set(to, missing.get(to)! + 1));
  const ready = block.filter((node) => missing.get(node) === 0).sort((a, b) => a - b);
  const order: number[] = [];
  for (let node = ready.shift(); node !== undefined; node = ready.shift()) {
    order.push(node);
    eachOut(node, (to) => {
      missing.set(to, missing.get(to)! - 1);
      if (missing.get(to) === 0) ready.push(to);
    });
  }
  return Int32Array.from(order);
}
