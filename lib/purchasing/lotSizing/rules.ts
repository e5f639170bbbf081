/** Fixed cost of an order and cost of keeping one unit for one period. */
export interface LotCosts {
  readonly setup: number;
  readonly holding: number;
}

/** Orders begun at the first period not yet covered, each over as many periods as `covers` says. */
const inTurn = (demand: readonly number[], covers: (first: number) => number): readonly number[] => {
  const lots = demand.map(() => 0);
  let first = 0;
  while (first < demand.length) {
    if (demand[first] === 0) {
      first++;
      continue;
    }
    const end = Math.min(demand.length, first + covers(first));
    for (let period = first; period < end; period++) lots[first]! += demand[period]!;
    first = end;
  }
  return lots;
};

/** Each period's demand ordered for itself. */
export const lotForLot = (demand: readonly number[]): readonly number[] => [...demand];

/** Each order covers so many periods, counted from the first that needs something (period order quantity). */
export const periodOrders = (demand: readonly number[], periods: number): readonly number[] => inTurn(demand, () => periods);

/**
 * Silver-Meal: an order covers periods as long as its cost a period falls (Silver & Meal 1973). What the goods themselves cost is left out:
 * it is the same whenever they are bought.
 */
export const silverMeal = (demand: readonly number[], { setup, holding }: LotCosts): readonly number[] =>
  inTurn(demand, (first) => {
    let cost = setup;
    for (let periods = 1; first + periods < demand.length; periods++) {
      const more = cost + holding * periods * demand[first + periods]!;
      if (more / (periods + 1) > cost / periods) return periods;
      cost = more;
    }
    return demand.length - first;
  });

/** Part-period balancing: an order covers periods until what is kept costs as much as an order, to whichever side is nearer (DeMatteis 1968). */
export const partPeriod = (demand: readonly number[], { setup, holding }: LotCosts): readonly number[] =>
  inTurn(demand, (first) => {
    let held = 0;
    for (let periods = 1; first + periods < demand.length; periods++) {
      const more = held + holding * periods * demand[first + periods]!;
      if (more > setup) return more - setup < setup - held ? periods + 1 : periods;
      held = more;
    }
    return demand.length - first;
  });

/** What lots come to: an order's fixed cost each time, and holding of what is left at each period's end. */
export const lotsCost = (demand: readonly number[], lots: readonly number[], { setup, holding }: LotCosts): number => {
  let left = 0;
  let cost = 0;
  for (const [period, lot] of lots.entries()) {
    left += lot - demand[period]!;
    cost += (lot > 0 ? setup : 0) + holding * left;
  }
  return cost;
};
