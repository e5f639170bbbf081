/** Lots that meet a demand known ahead, and what they come to. */
export interface LotPlan {
  /** Ordered in each period. */
  readonly lots: readonly number[];
  readonly cost: number;
  /** Least cost of meeting the demand of the first n periods: a bound and a proof for each horizon. */
  readonly throughPeriod: readonly number[];
}

export interface LotProblem {
  readonly demand: readonly number[];
  /** Cost of ordering so much in a period; called only for more than nothing. May fall with the quantity, in steps too. */
  readonly order: (period: number, quantity: number) => number;
  /** Cost of keeping one unit from one period to the next. */
  readonly holding: number;
}

/**
 * Dynamic lot sizing, exact among plans that order whole periods' demands (Wagner & Whitin, "Dynamic Version of the Economic Lot Size Model",
 * Management Science 5, 1958): the cheapest way to meet all demand, with nothing ordered while something is left. No plan at all is cheaper
 * where a greater order never costs more a unit than two smaller ones (fixed costs, incremental breaks); where all units take a better price,
 * an order may pay that reaches into a period, which `order` must offer by buying more than it is asked for.
 * Of equal costs the later order is taken, so that least lies on the shelf.
 */
export const wagnerWhitin = ({ demand, order, holding }: LotProblem): LotPlan => {
  const best = [0];
  const from: number[] = [];
  for (let end = 1; end <= demand.length; end++) {
    best[end] = Number.POSITIVE_INFINITY;
    let quantity = 0;
    let held = 0;
    for (let start = end - 1; start >= 0; start--) {
      // Demand that has been gathered so far waits one period longer when it is ordered one period earlier.
      held += holding * quantity;
      quantity += demand[start]!;
      const cost = best[start]! + held + (quantity > 0 ? order(start, quantity) : 0);
      if (cost < best[end]!) {
        best[end] = cost;
        from[end] = start;
      }
    }
  }
  const lots = demand.map(() => 0);
  for (let end = demand.length; end > 0; end = from[end]!)
    lots[from[end]!] = demand.slice(from[end]!, end).reduce((sum, each) => sum + each, 0);
  return { lots, cost: best[demand.length]!, throughPeriod: best.slice(1) };
};
