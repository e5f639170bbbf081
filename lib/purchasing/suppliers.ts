import { ascending } from "d3-array";
import type { MinorUnits } from "#lib/units/quantities";
import type { Choice } from "./choice";

/** Among so many suppliers that charge for an order, every combination is looked at; beyond, one is left out after the other. */
const MOST_EXACT = 12;

/** What a supplier charges for an order, whatever is in it. */
export interface Carriage {
  readonly supplier: string;
  readonly cost: MinorUnits;
}

const carriageOf = (choices: readonly (readonly Choice[])[]): ReadonlyMap<string, MinorUnits> => {
  const costs = new Map<string, MinorUnits>();
  for (const { offer } of choices.flat()) costs.set(offer.supplier, Math.max(costs.get(offer.supplier) ?? 0, offer.orderCost));
  return costs;
};

/**
 * From whom each material is bought, so that goods and the carriage of every supplier asked cost least in all: a supplier a little dearer is
 * taken where it saves an order. `choices` are those of each material, cheapest first; each comes back with the one to take in front.
 */
export const withCarriage = (choices: readonly (readonly Choice[])[]): readonly (readonly Choice[])[] => {
  const carriage = carriageOf(choices);
  const charging = [...carriage]
    .filter(([, cost]) => cost > 0)
    .map(([supplier]) => supplier)
    .sort(ascending);
  if (charging.length === 0) return choices;
  const taken = (without: ReadonlySet<string>) =>
    choices.map((own) => (own.length === 0 ? null : own.find(({ offer }) => !without.has(offer.supplier))));
  const costWithout = (without: ReadonlySet<string>): number => {
    let cost = 0;
    for (const choice of taken(without)) {
      if (choice === undefined) return Number.POSITIVE_INFINITY;
      cost += choice?.order.cost ?? 0;
    }
    return charging.reduce((sum, supplier) => sum + (without.has(supplier) ? 0 : carriage.get(supplier)!), cost);
  };
  const best = charging.length <= MOST_EXACT ? bestOfAll(charging, costWithout) : bestInTurn(charging, costWithout);
  return taken(best).map((choice, at) => (choice ? [choice, ...choices[at]!.filter((other) => other !== choice)] : choices[at]!));
};

const bestOfAll = (charging: readonly string[], cost: (without: ReadonlySet<string>) => number): ReadonlySet<string> => {
  let best: ReadonlySet<string> = new Set();
  for (let mask = 1; mask < 1 << charging.length; mask++) {
    const without = new Set(charging.filter((_, at) => mask & (1 << at)));
    if (cost(without) < cost(best)) best = without;
  }
  return best;
};

const bestInTurn = (charging: readonly string[], cost: (without: ReadonlySet<string>) => number): ReadonlySet<string> => {
  let best: ReadonlySet<string> = new Set();
  for (let better = true; better; ) {
    better = false;
    for (const supplier of charging) {
      const without = new Set([...best, supplier]);
      if (cost(without) >= cost(best)) continue;
      best = without;
      better = true;
    }
  }
  return best;
};

/** What the suppliers of these choices charge beside the goods, by name; none that charge nothing. */
export const carriageFor = (taken: readonly Choice[]): readonly Carriage[] =>
  [...carriageOf([taken])]
    .filter(([, cost]) => cost > 0)
    .map(([supplier, cost]) => ({ supplier, cost }))
    .sort((a, b) => ascending(a.supplier, b.supplier));
