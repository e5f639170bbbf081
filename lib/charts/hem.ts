/** One week (or day) of one skill, maker or machine. Needed and free are in one unit, minutes say. */
export interface HemCell {
  readonly code: string;
  readonly week: string;
  readonly needed: number;
  readonly free: number;
}

export interface HemBar {
  readonly week: string;
  /** Left edge of the free cloth; `width` may be 0. */
  readonly x: number;
  readonly width: number;
  /** Length above the chalk line, at most `full`. */
  readonly above: number;
  /** What hangs below it; null when nothing does. */
  readonly below: { readonly x: number; readonly width: number; readonly length: number; readonly over: number } | null;
}

export interface HemGroup {
  readonly code: string;
  readonly x: number;
  readonly width: number;
  readonly needed: number;
  readonly free: number;
  readonly over: number;
  readonly bars: readonly HemBar[];
}

export interface Hem {
  /** Picture units of width for one unit of free time, the same for every bar. */
  readonly scale: number;
  readonly width: number;
  /** How far the longest overhang reaches below the chalk line. */
  readonly hang: number;
  /** Most over first; those in time keep the order they came in. */
  readonly groups: readonly HemGroup[];
}

export interface HemSize {
  readonly width: number;
  /** From the rail to the chalk line. */
  readonly full: number;
  readonly barGap: number;
  readonly groupGap: number;
  /** So that the words at the head of a group fit. */
  readonly leastGroup: number;
}

/** The least an overhang is drawn wide; and how many lengths of the hem it may hang before it is drawn wider instead. */
const LEAST_BAR = 6;
const LONGEST_HANG = 2;

const overOf = (cell: HemCell): number => Math.max(0, cell.needed - cell.free);
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/**
 * The hem picture: hours hang from a rail. A bar is as wide as the hours free and as long as those needed, so that area is hours (width x
 * length = scale x full x needed for every bar), and the limit is one level chalk line across all. Where next to nothing is free, what is
 * over hangs as a bar of its own below the line, of the same area.
 */
export const hem = (cells: readonly HemCell[], size: HemSize): Hem => {
  const drawn = cells.filter((cell) => cell.needed > 0 || cell.free > 0);
  const codes = [...new Set(drawn.map((cell) => cell.code))];
  const all = codes
    .map((code) => drawn.filter((cell) => cell.code === code).sort((a, b) => (a.week < b.week ? -1 : 1)))
    .sort((a, b) => sum(b.map(overOf)) - sum(a.map(overOf)));
  const scale = scaleFor(all, size);
  let left = 0;
  const groups = all.map((own): HemGroup => {
    const x = left;
    const width = groupWidth(own, scale, size);
    left += width + size.groupGap;
    return {
      code: own[0]!.code,
      x,
      width,
      needed: sum(own.map((cell) => cell.needed)),
      free: sum(own.map((cell) => cell.free)),
      over: sum(own.map(overOf)),
      bars: barsOf(own, x, scale, size),
    };
  });
  const hang = Math.max(0, ...groups.flatMap((group) => group.bars.map((bar) => bar.below?.length ?? 0)));
  return { scale, width: Math.max(size.width, left - size.groupGap), hang, groups };
};

const belowWidth = (cell: HemCell, scale: number): number =>
  overOf(cell) === 0 ? 0 : Math.max(scale * cell.free, LEAST_BAR, (scale * overOf(cell)) / LONGEST_HANG);

const slotWidth = (cell: HemCell, scale: number): number => Math.max(scale * cell.free, belowWidth(cell, scale));

const barsWidth = (own: readonly HemCell[], scale: number, size: HemSize): number =>
  sum(own.map((cell) => slotWidth(cell, scale))) + size.barGap * (own.length - 1);

const groupWidth = (own: readonly HemCell[], scale: number, size: HemSize): number =>
  Math.max(size.leastGroup, barsWidth(own, scale, size));

/** The scale at which everything just fits: width only grows with the scale, so it is found by halving. */
const scaleFor = (groups: readonly (readonly HemCell[])[], size: HemSize): number => {
  const wide = (scale: number) => sum(groups.map((own) => groupWidth(own, scale, size))) + size.groupGap * (groups.length - 1);
  const free = sum(groups.flat().map((cell) => cell.free));
  let low = 0;
  let high = size.width / Math.max(1, free);
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (wide(middle) <= size.width) low = middle;
    else high = middle;
  }
  return low;
};

const barsOf = (own: readonly HemCell[], groupX: number, scale: number, size: HemSize): readonly HemBar[] => {
  let left = groupX;
  return own.map((cell): HemBar => {
    const slot = slotWidth(cell, scale);
    const width = scale * cell.free;
    const x = left + (slot - width) / 2;
    const belowAcross = belowWidth(cell, scale);
    const over = overOf(cell);
    const below =
      over === 0
        ? null
        : { x: left + (slot - belowAcross) / 2, width: belowAcross, length: (scale * size.full * over) / belowAcross, over };
    left += slot + size.barGap;
    return { week: cell.week, x, width, above: cell.free > 0 ? (size.full * (cell.needed - over)) / cell.free : 0, below };
  });
};
