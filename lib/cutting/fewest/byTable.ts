import type { CutJob } from "./job";
import { STOCK_WORTH, type Worthiest } from "./worth";

/** Places from the shortest up: after each, the best way whose longest piece is no longer than that one. */
export const byTable = (
  job: CutJob,
  counts: readonly number[],
  worth: readonly number[],
  places: readonly number[],
  limit: number,
): Worthiest => {
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
