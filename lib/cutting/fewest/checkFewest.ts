/** A plan by lengths, for the cutting table and for whoever checks it. */
export interface LengthPlan {
  readonly patterns: readonly { readonly count: number; readonly cuts: readonly (readonly [length: number, times: number])[] }[];
  readonly bins: number;
  readonly bound: number;
}

/**
 * Judges a plan from the pieces asked for, sharing no code with what makes plans: every piece is cut once, no stock is overfilled, and the
 * figures follow. Returns what is wrong, in words.
 */
export const checkFewest = (
  plan: LengthPlan,
  stock: number,
  asked: readonly (readonly [length: number, count: number])[],
): readonly string[] => {
  const faults: string[] = [];
  const balance = new Map<number, number>();
  for (const [length, count] of asked) balance.set(length, (balance.get(length) ?? 0) - count);
  let stocks = 0;
  for (const { count, cuts } of plan.patterns) {
    stocks += count;
    let filled = 0;
    for (const [length, times] of cuts) {
      filled += length * times;
      balance.set(length, (balance.get(length) ?? 0) + count * times);
      if (!Number.isInteger(times) || times < 1) faults.push(`${times} pieces of ${length} are cut from a stock.`);
    }
    if (!Number.isInteger(count) || count < 1) faults.push(`${count} stocks are cut one way.`);
    if (filled > stock) faults.push(`${filled} is cut from a stock of ${stock}.`);
  }
  for (const [length, over] of balance) if (over !== 0) faults.push(`Of ${length}, ${Math.abs(over)} too ${over > 0 ? "many" : "few"}.`);
  if (stocks !== plan.bins) faults.push(`${stocks} stocks are cut, ${plan.bins} are told.`);
  if (plan.bound > plan.bins) faults.push(`The bound ${plan.bound} is above the ${plan.bins} used.`);
  const all = asked.reduce((sum, [length, count]) => sum + length * count, 0);
  if (plan.bins * stock < all) faults.push(`${plan.bins} stocks of ${stock} cannot hold ${all}.`);
  return faults;
};
