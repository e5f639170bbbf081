import type { Length } from "#lib/units/quantities";

/** Steps looked at along the stock and across it: finer ones rarely say more. */
const ALONG = 24;
const ACROSS = 4;

/**
 * A share of a stock made greater or smaller so that what fits together still adds up to at most one: of k + 1 equal parts, as many as it
 * fills, counted against k (the functions u(k) of Fekete & Schepers 2001, "New classes of fast lower bounds for bin packing problems"; from
 * memory). 0 leaves it as it is.
 */
const stretched = (part: Length, whole: Length, k: number): number =>
  k === 0 || ((k + 1) * part) % whole === 0 ? part / whole : Math.floor(((k + 1) * part) / whole) / k;

/**
 * Stocks that no plan can do without when pieces lie side by side and keep their grain: the area, and the area with lengths and breadths
 * stretched by any of these functions.
 */
export const areaBound = (
  pieces: readonly { readonly length: Length; readonly breadth: Length }[],
  stock: Length,
  cuttable: Length,
): number => {
  let most = 0;
  for (let across = 0; across <= ACROSS; across++) {
    const breadths = pieces.map(({ breadth }) => stretched(breadth, cuttable, across));
    for (let along = 0; along <= ALONG; along++) {
      let sum = 0;
      for (const [at, { length }] of pieces.entries()) sum += stretched(length, stock, along) * breadths[at]!;
      most = Math.max(most, sum);
    }
  }
  return Math.ceil(most - 1e-6);
};
