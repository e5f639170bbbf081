import { Gaps } from "./gaps";

/** Pieces in typed arrays: `across` the direction the skyline runs, `up` the other. */
export interface Sides {
  readonly across: Int32Array;
  readonly up: Int32Array;
}

/** Where pieces came to lie; `up` is -1 for a piece left out. */
export interface Lie {
  readonly across: Int32Array;
  readonly up: Int32Array;
  readonly turned: Uint8Array;
}

export const emptyLie = (size: number): Lie => ({ across: new Int32Array(size), up: new Int32Array(size), turned: new Uint8Array(size) });

/** What pieces are laid in: `width` the way the skyline runs, `limit` the other; `turned` as in the job. */
export interface Frame {
  readonly width: number;
  readonly limit: number;
  readonly turned: boolean;
}

/**
 * Skyline best fit: the lowest gap takes, of the pieces in their order, the first that fits it best (exact width, level with a neighbour or
 * with the limit); a gap that takes none is filled up to its lower neighbour. After the scoring rule of Leung, Zhang & Sim 2011 ("A two-stage
 * intelligent search algorithm for the two-dimensional strip packing problem"; from memory). Returns the area of the pieces left out.
 */
export const skyline = ({ across, up }: Sides, order: Int32Array, { width, limit, turned }: Frame, lie: Lie): number => {
  const size = order.length;
  // A list of what is left, through the order: next[k] is the place in it after place k.
  const next = Int32Array.from(order.keys(), (at) => at + 1);
  let head = 0;
  const gaps = new Gaps(width, size);
  lie.up.fill(-1);
  while (head < size) {
    const gap = gaps.lowest();
    const room = gaps.widths[gap]!;
    const leftWall = gaps.leftWall(gap);
    const rightWall = gaps.rightWall(gap);
    const headroom = limit - gaps.levels[gap]!;
    let best = -1;
    let bestBefore = -1;
    let bestAt = -1;
    let bestTurn = 0;
    for (let before = -1, at = head; at < size && best < PERFECT; before = at, at = next[at]!) {
      const piece = order[at]!;
      for (let turn = 0; turn < (turned ? 2 : 1); turn++) {
        const wide = turn === 0 ? across[piece]! : up[piece]!;
        const high = turn === 0 ? up[piece]! : across[piece]!;
        if (wide > room || high > headroom) continue;
        const score = fitOf(wide === room, high, leftWall, rightWall, headroom);
        if (score > best) {
          best = score;
          bestAt = at;
          bestBefore = before;
          bestTurn = turn;
        }
      }
    }
    if (bestAt === -1) {
      if (gaps.count === 1) break;
      gaps.raise(gap, room, Math.min(leftWall, rightWall), false);
      continue;
    }
    const piece = order[bestAt]!;
    const wide = bestTurn === 0 ? across[piece]! : up[piece]!;
    const high = bestTurn === 0 ? up[piece]! : across[piece]!;
    const atRight = wide < room && high !== leftWall && (high === rightWall || rightWall > leftWall);
    lie.across[piece] = gaps.starts[gap]! + (atRight ? room - wide : 0);
    lie.up[piece] = gaps.levels[gap]!;
    lie.turned[piece] = bestTurn;
    if (bestBefore === -1) head = next[bestAt]!;
    else next[bestBefore] = next[bestAt]!;
    gaps.raise(gap, wide, high, atRight);
  }
  let left = 0;
  for (let at = head; at < size; at = next[at]!) left += across[order[at]!]! * up[order[at]!]!;
  return left;
};

const PERFECT = 9;

/** How well a piece fits a gap: best when it closes the gap and is level with both walls. */
const fitOf = (closes: boolean, high: number, leftWall: number, rightWall: number, headroom: number): number => {
  const meets = high === leftWall || high === rightWall;
  if (!closes) return meets ? 4 : high === headroom ? 3 : 0;
  if (high === leftWall && high === rightWall) return PERFECT;
  if (meets || high === headroom) return 8;
  return high > leftWall || high > rightWall ? 6 : 7;
};
