/** Blocks that may be placed next, least key first, ties by number. */
export class BlockHeap {
  private readonly heap: number[] = [];

  constructor(private readonly keys: Float64Array) {}

  push(block: number): void {
    const { heap } = this;
    let i = heap.length;
    heap.push(block);
    while (i > 0) {
      const parent = (i - 1) >> 1;
      if (!this.earlier(block, heap[parent]!)) break;
      heap[i] = heap[parent]!;
      i = parent;
    }
    heap[i] = block;
  }

  /** The block with the least key, or -1. */
  pop(): number {
    const { heap } = this;
    const top = heap[0] ?? -1;
    const last = heap.pop();
    if (last === undefined || heap.length === 0) return top;
    let i = 0;
    for (;;) {
      let child = 2 * i + 1;
      if (child >= heap.length) break;
      if (child + 1 < heap.length && this.earlier(heap[child + 1]!, heap[child]!)) child++;
      if (!this.earlier(heap[child]!, last)) break;
      heap[i] = heap[child]!;
      i = child;
    }
    heap[i] = last;
    return top;
  }

  private earlier(a: number, b: number): boolean {
    const difference = this.keys[a]! - this.keys[b]!;
    return difference < 0 || (difference === 0 && a < b);
  }
}
