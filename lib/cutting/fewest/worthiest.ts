import type { CutJob, Cuts } from "./job";

/** Worths as whole numbers, so that sums are exact: one stock is worth this much. */
export const STOCK_WORTH = 1e9;

/** The worthiest ways to cut one stock: the most that any way is worth (never less than one stock is), and ways worth more than a stock. */
export interface Worthiest {
  readonly most: number;
  readonly ways: readonly Cuts[];
}

/** Above this many cells a table costs more than a search. */
const TABLE_LIMIT = 4_000_000;

/**
 * The pricing problem of column generation, a bounded knapsack: given what a piece of each length is worth, which ways to cut are worth more
 * than the stock they use? Exact: by a table over the lengths of the stock where it is short, by a search where it is long.
 */
export const worthiest = (job: CutJob, counts: readonly number[], worth: readonly number[], limit: number): Worthiest => {
  const places = worth.flatMap((value, place) => (value > 0 && counts[place]! > 0 ? [place] : []));
  return places.length * (job.stock + 1) <= TABLE_LIMIT ? byTable(job, counts, worth, places, limit) : bySearch(job, counts, worth, places, limit);
};

/** Places from the shortest up: after each, the best way whose longest piece is no longer than that one. */
const byTable = (job: CutJob, counts: readonly number[], worth: readonly number[], places: readonly number[], limit: number): Worthiest => {
  const { stock, lengths } = job;
  const width = stock + 1;
  let best = new Float64Array(width);
  let next = new Float64Array(width);
  const taken = new Uint16Array(places.length * width);
  const found: { readonly value: number; readonly step: number }[] = [];
  let most = STOCK_WORTH;
  const order = [...places].reverse();
  for (const [step, place] of order.entries()) {
    const length = lengths[place]!;
    const value = worth[place]!;
    const copies = Math.min(counts[place]!, Math.floor(stock / length));
    const row = step * width;
    next.set(best);
    for (let times = 1; times <= copies; times++) {
      const gain = times * value;
      for (let room = times * length, from = 0; room < width; room++, from++) {
        const sum = best[from]! + gain;
        if (sum > next[room]!) {
          next[room] = sum;
          taken[row + room] = times;
        }
      }
    }
    [best, next] = [next, best];
    const reached = best[stock]!;
    if (reached > STOCK_WORTH && taken[row + stock]! > 0) found.push({ value: reached, step });
    most = Math.max(most, reached);
  }
  const ways = found
    .sort((a, b) => b.value - a.value || a.step - b.step)
    .slice(0, limit)
    .map(({ step }) => {
      const cuts: [number, number][] = [];
      let room = stock;
      for (let at = step; at >= 0; at--) {
        const times = taken[at * width + room]!;
        if (times === 0) continue;
        cuts.push([order[at]!, times]);
        room -= times * lengths[order[at]!]!;
      }
      return cuts;
    });
  return { most, ways };
};

/** Depth first by worth for length, with the rest of the stock valued at the next best rate as the bound. */
const bySearch = (job: CutJob, counts: readonly number[], worth: readonly number[], places: readonly number[], limit: number): Worthiest => {
  const { stock, lengths } = job;
  const order = [...places].sort((a, b) => worth[b]! * lengths[a]! - worth[a]! * lengths[b]! || a - b);
  const size = order.length;
  const long = Float64Array.from(order, (place) => lengths[place]!);
  const value = Float64Array.from(order, (place) => worth[place]!);
  const rate = Float64Array.from(order, (_, at) => value[at]! / long[at]!);
  const shortest = new Float64Array(size + 1).fill(Number.POSITIVE_INFINITY);
  for (let at = size - 1; at >= 0; at--) shortest[at] = Math.min(shortest[at + 1]!, long[at]!);
  const chosen = new Int32Array(size);
  const ways: { readonly value: number; readonly cuts: Cuts }[] = [];
  let most = STOCK_WORTH;
  const search = (from: number, room: number, sum: number): void => {
    if (sum > most) {
      most = sum;
      const cuts = order.flatMap((place, at): [number, number][] => (chosen[at]! > 0 ? [[place, chosen[at]!]] : []));
      ways.push({ value: sum, cuts: cuts.sort(([a], [b]) => a - b) });
    }
    for (let at = from; at < size; at++) {
      if (room < shortest[at]!) return;
      // Half a unit covers the rounding of the rate: worths are whole numbers.
      if (sum + room * rate[at]! + 0.5 <= most) return;
      const copies = Math.min(counts[order[at]!]!, Math.floor(room / long[at]!));
      for (let times = copies; times > 0; times--) {
        chosen[at] = times;
        search(at + 1, room - times * long[at]!, sum + times * value[at]!);
      }
      chosen[at] = 0;
    }
  };
  search(0, stock, 0);
  return { most, ways: ways.sort((a, b) => b.value - a.value).slice(0, limit).map(({ cuts }) => cuts) };
};
