import type { CutJob, CutStocks } from "./job";

/** Nodes of one search. */
const NODES = 4000;

/**
 * Cuts what is left from so many stocks, by trying every way to fill the stock of the longest piece left that wastes no more than there is
 * to waste (bin completion, Korf 2002; from memory). Null when there is no such plan, or none is found in time.
 */
export const completeWithin = ({ stock, lengths }: CutJob, counts: readonly number[], stocks: number): readonly CutStocks[] | null => {
  const left = [...counts];
  const spare = stocks * stock - left.reduce((sum, count, place) => sum + count * lengths[place]!, 0);
  if (spare < 0) return null;
  const plan: [number, number][][] = [];
  let nodes = 0;

  const nextStock = (waste: number): boolean => {
    const longest = left.findIndex((count) => count > 0);
    if (longest === -1) return true;
    if (plan.length === stocks) return false;
    const cuts: [number, number][] = [[longest, 1]];
    plan.push(cuts);
    left[longest]!--;
    if (fill(cuts, longest, stock - lengths[longest]!, waste)) return true;
    left[longest]!++;
    plan.pop();
    return false;
  };

  const fill = (cuts: [number, number][], from: number, room: number, waste: number): boolean => {
    if (++nodes > NODES) return false;
    for (let place = from; place < lengths.length; place++) {
      if (left[place] === 0 || lengths[place]! > room) continue;
      left[place]!--;
      cuts.push([place, 1]);
      if (fill(cuts, place, room - lengths[place]!, waste)) return true;
      cuts.pop();
      left[place]!++;
    }
    return room <= waste && nodes <= NODES && nextStock(waste - room);
  };

  return nextStock(spare) ? plan.map((cuts) => ({ cuts, times: 1 })) : null;
};
