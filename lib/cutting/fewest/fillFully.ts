import type { CutJob, CutStocks } from "./job";

/** Tries for each stock, so that a long list costs no more than its length. */
const TRIES = 3000;

/**
 * One stock at a time: the longest piece left, and beside it the pieces that fill the stock most, long ones first (the minimum bin slack
 * rule of Gupta & Ho 1999, with the longest piece in each stock after Fleszar & Hindi 2002; from memory).
 */
export const fillFully = ({ stock, lengths }: CutJob, counts: readonly number[]): readonly CutStocks[] => {
  const left = [...counts];
  const plan: CutStocks[] = [];
  const taken = new Int32Array(lengths.length);
  const best = new Int32Array(lengths.length);
  let least = 0;
  let tries = 0;
  const fill = (from: number, room: number): void => {
    tries++;
    if (room < least) {
      least = room;
      best.set(taken);
    }
    for (let place = from; place < lengths.length && least > 0 && tries < TRIES; place++) {
      const most = Math.min(left[place]! - (taken[place] ?? 0), Math.floor(room / lengths[place]!));
      for (let times = most; times > 0 && least > 0 && tries < TRIES; times--) {
        taken[place]! += times;
        fill(place + 1, room - times * lengths[place]!);
        taken[place]! -= times;
      }
    }
  };
  for (let first = 0; first < lengths.length; first++) {
    while (left[first]! > 0) {
      taken.fill(0);
      taken[first] = 1;
      least = stock;
      tries = 0;
      fill(first, stock - lengths[first]!);
      const cuts = [...best.entries()].filter(([, times]) => times > 0);
      const alike = cuts.reduce((fewest, [place, times]) => Math.min(fewest, Math.floor(left[place]! / times)), Number.POSITIVE_INFINITY);
      for (const [place, times] of cuts) left[place]! -= times * alike;
      plan.push({ cuts, times: alike });
    }
  }
  return plan;
};
