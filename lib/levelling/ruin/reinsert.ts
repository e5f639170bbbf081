import { BlockHeap } from "../blockHeap";
import { BlockPlacer } from "../blockPlacer";
import type { Compiled } from "../compiled";
import { earliestAfter, lagTooLong } from "../lags";
import type { Choices } from "../placeNode";
import type { Schedule } from "../schedule";
import { endNow } from "./retime";

/**
 * Takes nodes out of a schedule and puts them back in the order of their keys, each as early as it can be among what stayed. What
 * follows one that now ends too late for it loses its place too, and is put back in its turn.
 */
export class Reinsertion {
  private readonly keys: Float64Array;
  private readonly placer: BlockPlacer;
  private readonly out: Uint8Array;
  private readonly fixed: Uint8Array;
  private readonly unplacedBefore = new Set<number>();
  private taken: number[] = [];
  /** Pinned node that made the last run fail, or -1. */
  pinInTheWay = -1;

  constructor(
    readonly schedule: Schedule,
    choices: Choices,
  ) {
    const { compiled } = schedule;
    this.keys = new Float64Array(compiled.blocks.length);
    this.placer = new BlockPlacer(schedule, choices);
    this.out = new Uint8Array(compiled.blocks.length);
    this.fixed = fixedBlocks(compiled);
  }

  /**
   * Victims with their keys: least goes back first; what must make way goes by the start it had. Nodes put back, or -1 when more
   * than `most` blocks had to move or something lost its place for good: then the schedule is to be taken back.
   */
  run(victims: ReadonlyMap<number, number>, most: number): number {
    const nodes = this.tried(victims, most);
    for (const block of this.taken) this.out[block] = 0;
    this.taken = [];
    this.unplacedBefore.clear();
    return nodes;
  }

  private tried(victims: ReadonlyMap<number, number>, most: number): number {
    const { schedule } = this;
    const { compiled } = schedule;
    const ready = new BlockHeap(this.keys);
    for (const node of victims.keys()) {
      const block = compiled.blockOf[node]!;
      if (this.out[block] === 0 && this.fixed[block] === 0 && !this.eject(block)) return -1;
    }
    for (const [node, key] of victims) this.keys[compiled.blockOf[node]!] = key;
    const waiting = this.taken.slice();
    let nodes = 0;
    let left = this.taken.length;
    for (const block of waiting) if (this.isReady(block)) ready.push(block);
    for (let block = ready.pop(); block >= 0; block = ready.pop()) {
      if (this.out[block] === 0 || !this.isReady(block)) continue;
      const before = this.taken.length;
      if (!this.putBack(block)) return -1;
      nodes += compiled.blocks[block]!.length;
      left += this.taken.length - before - 1;
      if (this.taken.length > most) return -1;
      for (const other of this.taken.slice(before)) if (this.isReady(other)) ready.push(other);
      this.eachLink(block, (link) => {
        const after = compiled.blockOf[compiled.links.after[link]!]!;
        if (this.out[after] === 1 && this.isReady(after)) ready.push(after);
      });
    }
    return left > 0 ? -1 : nodes;
  }

  /** False when something that may not move is in the way. */
  private eject(block: number): boolean {
    const { schedule } = this;
    if (this.fixed[block] === 1) return false;
    this.out[block] = 1;
    this.taken.push(block);
    const nodes = schedule.compiled.blocks[block]!;
    this.keys[block] = nodes.reduce((least, node) => Math.min(least, schedule.start[node]!), Number.POSITIVE_INFINITY);
    for (const node of nodes) {
      if (schedule.compiled.problem.nodes[node]!.pin !== null) continue;
      const why = schedule.unplaced[node]!;
      schedule.remember(node, () => {
        schedule.unplaced[node] = why;
      });
      if (!schedule.isPlaced(node)) this.unplacedBefore.add(node);
      schedule.unplaced[node] = null;
      if (!schedule.isPlaced(node)) continue;
      if (schedule.visitOf[node]! < 0) schedule.take(node);
      else if (!this.callOff(schedule.visitOf[node]!)) return false;
    }
    return true;
  }

  /** A visit goes with all its fittings, and the work it interrupted ends sooner. */
  private callOff(number: number): boolean {
    const { schedule } = this;
    const { compiled } = schedule;
    const { fitter, start, end, fittings } = schedule.visits[number]!;
    if (fittings.some((node) => compiled.problem.nodes[node]!.pin !== null)) return false;
    schedule.closeVisit(number);
    const busy = schedule.work[fitter]!;
    const i = busy.firstEndingAfter(start);
    const task = busy.ids[i];
    if (task !== undefined && busy.starts[i]! < end && !this.shorten(task)) return false;
    for (const node of fittings) {
      const block = compiled.blockOf[node]!;
      if (this.out[block] === 0 && !this.eject(block)) return false;
    }
    return true;
  }

  private shorten(task: number): boolean {
    const { schedule } = this;
    const end = endNow(schedule, task);
    if (end > schedule.end[task]!) return false;
    if (end < schedule.end[task]!) schedule.prolong(task, end);
    let holds = true;
    this.eachLinkOut(task, (link) => {
      const start = schedule.start[schedule.compiled.links.after[link]!]!;
      if (start >= 0 && lagTooLong(schedule.compiled, link, end, start) > 0) holds = false;
    });
    return holds;
  }

  private putBack(block: number): boolean {
    const { schedule } = this;
    const { compiled } = schedule;
    const nodes = compiled.blocks[block]!;
    this.pinInTheWay = this.placer.place(nodes);
    if (this.pinInTheWay >= 0) return false;
    this.out[block] = 0;
    for (const node of nodes) if (!schedule.isPlaced(node) && this.unplacedBefore.has(node)) this.loseFollowers(node);
    let possible = nodes.every(
      (node) => schedule.isPlaced(node) || this.unplacedBefore.has(node) || compiled.problem.nodes[node]!.pin !== null,
    );
    this.eachLink(block, (link) => {
      const before = compiled.links.before[link]!;
      const after = compiled.links.after[link]!;
      const start = schedule.start[after]!;
      const placed = schedule.isPlaced(before);
      const late = start >= 0 && placed && start < earliestAfter(compiled, link, schedule.end[before]!);
      const waited = placed && this.unplacedBefore.has(before) && schedule.unplaced[after]?.reason === "waits for an unplaced one";
      if (possible && (late || waited)) possible = this.eject(compiled.blockOf[after]!);
    });
    return possible;
  }

  /** What waits for one that has no place has none either. */
  private loseFollowers(node: number): void {
    const { schedule } = this;
    const { links, blockOf, blocks } = schedule.compiled;
    this.eachLinkOut(node, (link) => {
      const after = links.after[link]!;
      if (!schedule.isPlaced(after) || blockOf[after] === blockOf[node]) return;
      if (this.eject(blockOf[after]!)) for (const lost of blocks[blockOf[after]!]!) this.unplacedBefore.add(lost);
    });
  }

  /** Nothing it waits for is out. */
  private isReady(block: number): boolean {
    const { links, blocks, blockOf } = this.schedule.compiled;
    for (const node of blocks[block]!) {
      for (let i = links.intoFirst[node]!; i < links.intoFirst[node + 1]!; i++) {
        const before = blockOf[links.before[links.into[i]!]!]!;
        if (before !== block && this.out[before] === 1) return false;
      }
    }
    return true;
  }

  /** Links from the block to others. */
  private eachLink(block: number, visit: (link: number) => void): void {
    const { links, blocks, blockOf } = this.schedule.compiled;
    for (const node of blocks[block]!) this.eachLinkOut(node, (link) => blockOf[links.after[link]!] !== block && visit(link));
  }

  private eachLinkOut(node: number, visit: (link: number) => void): void {
    const { links } = this.schedule.compiled;
    for (let i = links.outFirst[node]!; i < links.outFirst[node + 1]!; i++) visit(links.out[i]!);
  }
}

/** Nothing of the block can move. */
function fixedBlocks({ blocks, problem }: Compiled): Uint8Array {
  return Uint8Array.from(blocks, (block) => (block.every((node) => problem.nodes[node]!.pin !== null) ? 1 : 0));
}
