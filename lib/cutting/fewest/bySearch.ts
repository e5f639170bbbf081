import type { CutJob, Cuts } from "./job";
import { STOCK_WORTH, type Worthiest } from "./worth";

/** Cells a stock is divided into for the bounds, and of the table in all. */
const FINEST = 4000;
const CELLS = 2_000_000;
/** Nodes of one search. */
const NODES = 1_000_000;

/**
 * Depth first, the worthiest for their length first. What the rest of a stock can be worth is bounded by a table on a coarse grid with all
 * lengths rounded down; if the search grows too long, that bound stands for the most that any way is worth.
 */
export const bySearch = (
  job: CutJob,
  counts: readonly number[],
  worth: readonly number[],
  places: readonly number[],
  limit: number,
): Worthiest => {
  const { stock, lengths } = job;
  const order = [...places].sort((a, b) => worth[b]! * lengths[a]! - worth[a]! * lengths[b]! || a - b);
  const size = order.length;
  const copies = order.map((place) => Math.min(counts[place]!, Math.floor(stock / lengths[place]!)));
  const grid = Math.min(FINEST, stock, Math.floor(CELLS / (size + 1)));
  const rest = boundsOfRest(job, worth, order, copies, grid);
  const shortest = new Float64Array(size + 1).fill(Number.POSITIVE_INFINITY);
  for (let at = size - 1; at >= 0; at--) shortest[at] = Math.min(shortest[at + 1]!, lengths[order[at]!]!);
  const chosen = new Int32Array(size);
  const ways: { readonly value: number; readonly cuts: Cuts }[] = [];
  let most = STOCK_WORTH;
  let nodes = 0;
  const search = (from: number, room: number, sum: number): void => {
    nodes++;
    if (sum > most) {
      most = sum;
      const cuts = order.flatMap((place, at): [number, number][] => (chosen[at]! > 0 ? [[place, chosen[at]!]] : []));
      ways.push({ value: sum, cuts: cuts.sort(([a], [b]) => a - b) });
    }
    const cell = Math.floor((room * grid) / stock);
    for (let at = from; at < size && nodes < NODES; at++) {
      if (room < shortest[at]! || sum + rest[at * (grid + 1) + cell]! <= most) return;
      const length = lengths[order[at]!]!;
      for (let times = Math.min(copies[at]!, Math.floor(room / length)); times > 0; times--) {
        chosen[at] = times;
        search(at + 1, room - times * length, sum + times * worth[order[at]!]!);
      }
      chosen[at] = 0;
    }
  };
  search(0, stock, 0);
  const sorted = ways.sort((a, b) => b.value - a.value).slice(0, limit);
  return { most: nodes < NODES ? most : Math.max(most, rest[grid]!), ways: sorted.map(({ cuts }) => cuts) };
};

/** The most that the lengths from each place in the order on can be worth, in each number of cells. */
const boundsOfRest = (
  { stock, lengths }: CutJob,
  worth: readonly number[],
  order: readonly number[],
  copies: readonly number[],
  grid: number,
): Float64Array => {
  const width = grid + 1;
  const rest = new Float64Array((order.length + 1) * width);
  for (let at = order.length - 1; at >= 0; at--) {
    const row = at * width;
    const cells = Math.floor((lengths[order[at]!]! * grid) / stock);
    const value = worth[order[at]!]!;
    rest.copyWithin(row, row + width, row + 2 * width);
    for (let times = 1; times <= copies[at]!; times++)
      for (let room = times * cells, from = row + width; room < width; room++, from++) {
        const sum = rest[from]! + times * value;
        if (sum > rest[row + room]!) rest[row + room] = sum;
      }
  }
  return rest;
};
