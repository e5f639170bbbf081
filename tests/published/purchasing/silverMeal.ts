/** Fixed cost of an order and cost of keeping one unit for one period. */
export interface LotCosts {
  readonly setup: number;
  readonly holding: number;
}

/**
 * Silver-Meal, as the published pages work it: an order covers periods as long as its cost a period falls (Silver & Meal 1973). What the goods
 * themselves cost is left out: it is the same whenever they are bought. Here to lay the exact lots beside.
 */
export const silverMeal = (demand: readonly number[], { setup, holding }: LotCosts): readonly number[] => {
  const lots = demand.map(() => 0);
  for (let first = 0; first < demand.length; ) {
    let cost = setup;
    let periods = 1;
    for (; first + periods < demand.length; periods++) {
      const more = cost + holding * periods * demand[first + periods]!;
      if (more / (periods + 1) > cost / periods) break;
      cost = more;
    }
    lots[first] = demand.slice(first, first + periods).reduce((sum, each) => sum + each, 0);
    first += periods;
  }
  return lots;
};

/** What lots come to: an order's fixed cost each time, and holding of what is left at each period's end. */
export const lotsCost = (demand: readonly number[], lots: readonly number[], setups: readonly number[], holding: number): number => {
  let left = 0;
  return lots.reduce((cost, lot, period) => {
    left += lot - demand[period]!;
    return cost + (lot > 0 ? setups[period]! : 0) + holding * left;
  }, 0);
};
