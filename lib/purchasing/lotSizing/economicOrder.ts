/** A steady demand: units a year, cost of an order, and what keeping a unit a year costs as a share of its price. */
export interface SteadyDemand {
  readonly demand: number;
  readonly setup: number;
  readonly holdingRate: number;
}

/** Price of a unit from so many on, ascending; the first `from` is 0 or 1. */
export type PriceSteps = readonly { readonly from: number; readonly price: number }[];

export interface EconomicOrder {
  readonly quantity: number;
  /** A year: goods, orders and keeping. */
  readonly cost: number;
}

/** Square-root rule (Harris 1913): the order whose own cost and keeping are alike. `holding` is the cost of keeping one unit a year. */
export const economicOrder = (demand: number, setup: number, holding: number): EconomicOrder => {
  const quantity = Math.sqrt((2 * setup * demand) / holding);
  return { quantity, cost: (setup * demand) / quantity + (holding * quantity) / 2 };
};

const cheapest = (orders: readonly EconomicOrder[]): EconomicOrder => orders.reduce((a, b) => (b.cost < a.cost ? b : a));

/** All units take the price reached: the best of each step's own economic order, or its first quantity where that is less. */
export const allUnitsOrder = ({ demand, setup, holdingRate }: SteadyDemand, steps: PriceSteps): EconomicOrder =>
  cheapest(
    steps.flatMap(({ from, price }, at) => {
      const holding = holdingRate * price;
      const quantity = Math.max(from, economicOrder(demand, setup, holding).quantity);
      if (quantity >= (steps[at + 1]?.from ?? Number.POSITIVE_INFINITY)) return [];
      return [{ quantity, cost: demand * price + (setup * demand) / quantity + (holding * quantity) / 2 }];
    }),
  );

/** Each unit keeps the price of its own step: what the units before a step cost beyond its price is a fixed cost of every order there. */
export const incrementalOrder = ({ demand, setup, holdingRate }: SteadyDemand, steps: PriceSteps): EconomicOrder => {
  let before = 0;
  return cheapest(
    steps.flatMap(({ from, price }, at) => {
      if (at > 0) before += (from - steps[at - 1]!.from) * steps[at - 1]!.price;
      const extra = before - price * from;
      const holding = holdingRate * price;
      const { quantity } = economicOrder(demand, setup + extra, holding);
      if (quantity < from || quantity >= (steps[at + 1]?.from ?? Number.POSITIVE_INFINITY)) return [];
      const cost = demand * price + ((setup + extra) * demand) / quantity + (holding * quantity) / 2 + (holdingRate * extra) / 2;
      return [{ quantity, cost }];
    }),
  );
};
