import type { CutJob, CutStocks, Cuts } from "./job";

/** Best-fit decreasing by lengths: longest first, each into the fullest stock that has room for it. `counts` are those still to be cut. */
export const bestFit = ({ stock, lengths }: CutJob, counts: readonly number[]): readonly CutStocks[] => {
  const bins: { room: number; readonly cuts: [number, number][] }[] = [];
  for (const [place, length] of lengths.entries()) {
    for (let piece = 0; piece < counts[place]!; piece++) {
      let best: (typeof bins)[number] | undefined;
      for (const bin of bins) if (bin.room >= length && (best === undefined || bin.room < best.room)) best = bin;
      if (best === undefined) {
        best = { room: stock, cuts: [] };
        bins.push(best);
      }
      best.room -= length;
      addCut(best.cuts, place);
    }
  }
  return bins.map(({ cuts }) => ({ cuts, times: 1 }));
};

/** Fills one stock at a time, always with the longest piece that still fits: first-fit decreasing by lengths, with the same stocks. */
export const fillInTurn = ({ stock, lengths }: CutJob, counts: readonly number[]): readonly CutStocks[] => {
  const left = [...counts];
  const plan: CutStocks[] = [];
  let first = 0;
  while (true) {
    while (first < left.length && left[first] === 0) first++;
    if (first === left.length) return plan;
    const cuts: [number, number][] = [];
    let room = stock;
    let alike = Number.POSITIVE_INFINITY;
    for (let place = first; place < left.length && room > 0; place++) {
      const times = Math.min(left[place]!, Math.floor(room / lengths[place]!));
      if (times === 0) continue;
      cuts.push([place, times]);
      room -= times * lengths[place]!;
      alike = Math.min(alike, Math.floor(left[place]! / times));
    }
    for (const [place, times] of cuts) left[place]! -= times * alike;
    plan.push({ cuts, times: alike });
  }
};

const addCut = (cuts: [number, number][], place: number): void => {
  const last = cuts.at(-1);
  if (last?.[0] === place) last[1]++;
  else cuts.push([place, 1]);
};

/** Alike ways to cut told once, with their stocks added up. */
export const gathered = (plan: readonly CutStocks[]): readonly CutStocks[] => {
  const byName = new Map<string, { cuts: Cuts; times: number }>();
  for (const { cuts, times } of plan) {
    const name = cuts.map(([place, count]) => `${place}x${count}`).join(" ");
    const known = byName.get(name);
    if (known) known.times += times;
    else byName.set(name, { cuts, times });
  }
  return [...byName.values()];
};
