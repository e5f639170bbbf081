import type { Cuts } from "./job";

/** Worths as whole numbers, so that sums are exact: one stock is worth this much. */
export const STOCK_WORTH = 1e9;

/** The worthiest ways to cut one stock: the most that any way is worth (never less than one stock is), and ways worth more than a stock. */
export interface Worthiest {
  readonly most: number;
  readonly ways: readonly Cuts[];
}
