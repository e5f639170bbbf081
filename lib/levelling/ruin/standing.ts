import type { Aims } from "../aims";
import type { Tally } from "./tally";

/** Figures of a schedule in the order of importance: of two, the one with the first lesser figure is the better plan. */
export type Standing = readonly number[];

export const standingOf = (tally: Tally, visits: number, { order, evennessStep }: Aims): Standing => {
  const unevenness = tally.unevenness / 1e6;
  const figures = { unevenness: Math.round(unevenness / evennessStep), moved: tally.moved, visits };
  return [tally.unplaced, tally.lateness, tally.overtime, ...order.map((aim) => figures[aim]), unevenness, tally.ends];
};

export const compareStandings = (a: Standing, b: Standing): number => {
  const at = a.findIndex((figure, i) => figure !== b[i]);
  return at < 0 ? 0 : a[at]! - b[at]!;
};
