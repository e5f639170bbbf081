/** Bits of one integer. */
const WORD = 32;

/** Amounts of several resources side by side in one integer; the top bit of each lane is its guard. */
export interface Lanes {
  readonly guard: number;
  pack(amounts: readonly number[]): number;
}

/**
 * Lanes wide enough for these capacities; null when they do not fit into one integer (four resources of up to 127 do).
 * With all guards set in `available`, every lane has enough exactly when ((available - required) & guard) === guard.
 */
export function lanesFor(capacities: readonly number[]): Lanes | null {
  const widths = capacities.map((capacity) => WORD - Math.clz32(capacity) + 1);
  if (widths.reduce((sum, width) => sum + width, 0) > WORD) return null;
  const shifts: number[] = [];
  let shift = 0;
  let guard = 0;
  for (const width of widths) {
    shifts.push(shift);
    shift += width;
    guard |= 1 << (shift - 1);
  }
  return { guard, pack: (amounts) => amounts.reduce((word, amount, lane) => word | (amount << shifts[lane]!), 0) };
}
