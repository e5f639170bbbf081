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

/**
 * Skyline best fit: the lowest gap takes, of the pieces in their order, the first that fits it best (exact width, level with a neighbour or
 * with the limit); a gap that takes none is filled up to its lower neighbour. After the scoring rule of Leung, Zhang & Sim 2011 ("A two-stage
 * intelligent search algorithm for the two-dimensional strip packing problem"; from memory). Returns the area of the pieces left out.
 */
export const skyline = (
  sides: Sides,
  order: Int32Array,
  frame: { readonly width: number; readonly limit: number; readonly turned: boolean },
  lie: Lie,
): number => {
  const { across, up } = sides;
  const { width, limit } = frame;
  const size = order.length;
  const next = new Int32Array(size + 1);
  for (let at = 0; at <= size; at++) next[at] = at;
  // next[k] is the index into `order` after the k-th kept place: a list that loses pieces as they are placed.
  for (let at = 0; at < size; at++) next[at] = at + 1;
  let head = 0;
  const starts = new Int32Array(size + 2);
  const levels = new Int32Array(size + 2);
  const widths = new Int32Array(size + 2);
  widths[0] = width;
  let gaps = 1;
  lie.up.fill(-1);
  const drop = (from: number) => {
    for (let at = from; at < gaps - 1; at++) {
      starts[at] = starts[at + 1]!;
      levels[at] = levels[at + 1]!;
      widths[at] = widths[at + 1]!;
    }
    gaps--;
  };
  while (head < size) {
    let gap = 0;
    for (let at = 1; at < gaps; at++) if (levels[at]! < levels[gap]!) gap = at;
    const level = levels[gap]!;
    const room = widths[gap]!;
    const leftWall = gap === 0 ? 1e9 : levels[gap - 1]! - level;
    const rightWall = gap === gaps - 1 ? 1e9 : levels[gap + 1]! - level;
    const head0 = limit - level;
    let best = -1;
    let bestBefore = -1;
    let bestIndex = -1;
    let bestTurned = 0;
    for (let before = -1, index = head; index < size && best < 9; before = index, index = next[index]!) {
      const piece = order[index]!;
      for (let turn = 0; turn < 2; turn++) {
        const wide = turn === 0 ? across[piece]! : up[piece]!;
        const high = turn === 0 ? up[piece]! : across[piece]!;
        if (wide <= room && high <= head0) {
          const meets = high === leftWall || high === rightWall;
          let score: number;
          if (wide === room)
            score = high === leftWall && high === rightWall ? 9 : meets || high === head0 ? 8 : high > leftWall || high > rightWall ? 6 : 7;
          else score = meets ? 4 : high === head0 ? 3 : 0;
          if (score > best) {
            best = score;
            bestIndex = index;
            bestBefore = before;
            bestTurned = turn;
          }
        }
        if (!frame.turned) break;
      }
    }
    if (bestIndex === -1) {
      if (gaps === 1) break;
      levels[gap] = level + Math.min(leftWall, rightWall);
    } else {
      const piece = order[bestIndex]!;
      const wide = bestTurned === 0 ? across[piece]! : up[piece]!;
      const high = bestTurned === 0 ? up[piece]! : across[piece]!;
      const atRight = wide < room && (high === rightWall ? high !== leftWall : high !== leftWall && rightWall > leftWall);
      lie.across[piece] = atRight ? starts[gap]! + room - wide : starts[gap]!;
      lie.up[piece] = level;
      lie.turned[piece] = bestTurned;
      if (bestBefore === -1) head = next[bestIndex]!;
      else next[bestBefore] = next[bestIndex]!;
      if (wide === room) levels[gap] = level + high;
      else {
        for (let at = gaps; at > gap; at--) {
          starts[at] = starts[at - 1]!;
          levels[at] = levels[at - 1]!;
          widths[at] = widths[at - 1]!;
        }
        gaps++;
        const placed = atRight ? gap + 1 : gap;
        const rest = atRight ? gap : gap + 1;
        widths[placed] = wide;
        starts[placed] = lie.across[piece]!;
        levels[placed] = level + high;
        widths[rest] = room - wide;
        starts[rest] = atRight ? starts[gap]! : lie.across[piece]! + wide;
        levels[rest] = level;
        gap = placed;
      }
    }
    if (gap < gaps - 1 && levels[gap] === levels[gap + 1]) {
      widths[gap]! += widths[gap + 1]!;
      drop(gap + 1);
    }
    if (gap > 0 && levels[gap] === levels[gap - 1]) {
      widths[gap - 1]! += widths[gap]!;
      drop(gap);
    }
  }
  let left = 0;
  for (let index = head; index < size; index = next[index]!) left += across[order[index]!]! * up[order[index]!]!;
  return left;
};
