import { BlockHeap } from "./blockHeap";
import { BlockPlacer } from "./blockPlacer";
import type { Compiled } from "./compiled";
import { placePins } from "./pins";
import type { Choices } from "./placeNode";
import { Schedule } from "./schedule";

/** Why a pin is given up. */
export const FIXED_TOO_SOON = {
  reason: "no time left in the calendars",
  detail: "It is fixed at a time before an earlier step can be done.",
} as const;

/**
 * Serial schedule generation (Kelley 1963): in order of the keys, among those whose predecessors are placed, each node goes
 * where it can start earliest, gaps included. Pins come first. A pin that an earlier step cannot meet is given up, and the
 * pass begins again without it.
 */
export function serial(compiled: Compiled, keys: Float64Array, choices: Choices, prepare?: (schedule: Schedule) => void): Schedule {
  const dropped = new Set<number>();
  for (;;) {
    const schedule = new Schedule(compiled);
    placePins(schedule, dropped);
    prepare?.(schedule);
    for (const node of dropped) schedule.unplaced[node] = FIXED_TOO_SOON;
    const broken = fill(schedule, keys, choices);
    if (broken < 0) return schedule;
    dropped.add(broken);
  }
}

/** Place all that is not placed; -1, or a pinned node that stands in the way. */
function fill(schedule: Schedule, keys: Float64Array, choices: Choices): number {
  const { compiled } = schedule;
  const { blocks, blockOf, links } = compiled;
  const missing = new Int32Array(blocks.length);
  for (let link = 0; link < links.before.length; link++) {
    const from = blockOf[links.before[link]!]!;
    const to = blockOf[links.after[link]!]!;
    if (from !== to) missing[to] = missing[to]! + 1;
  }
  const blockKeys = new Float64Array(blocks.length).fill(Number.POSITIVE_INFINITY);
  for (let node = 0; node < compiled.count; node++) {
    const block = blockOf[node]!;
    if (keys[node]! < blockKeys[block]!) blockKeys[block] = keys[node]!;
  }
  const ready = new BlockHeap(blockKeys);
  for (let block = 0; block < blocks.length; block++) if (missing[block] === 0) ready.push(block);
  const placer = new BlockPlacer(schedule, choices);
  for (let block = ready.pop(); block >= 0; block = ready.pop()) {
    const broken = placer.place(blocks[block]!);
    if (broken >= 0) return broken;
    for (const node of blocks[block]!) {
      for (let i = links.outFirst[node]!; i < links.outFirst[node + 1]!; i++) {
        const to = blockOf[links.after[links.out[i]!]!]!;
        if (to === block) continue;
        missing[to] = missing[to]! - 1;
        if (missing[to] === 0) ready.push(to);
      }
    }
  }
  for (let node = 0; node < compiled.count; node++) {
    if (!schedule.isPlaced(node) && schedule.unplaced[node] === null) {
      schedule.unplaced[node] = { reason: "waits for an unplaced one", detail: "The steps before it wait for one another in a circle." };
    }
  }
  return -1;
}
