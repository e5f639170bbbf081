import type { PerMille } from "#lib/units/quantities";

/**
 * Learning curves with a percentage p: each doubling of the number made takes p of what it took before. With b = ln p / ln 2,
 * Crawford says the *n*th unit takes n^b of the first; Wright says the *average* of the first n does.
 * (J. R. Crawford, 1944; T. P. Wright, 1936.)
 */
const exponent = (learning: PerMille): number => Math.log(learning / 1000) / Math.LN2;

/** Crawford: time of unit n as a ratio of the first. `learning` 1000 is none. */
export const crawfordUnit = (n: number, learning: PerMille): number => n ** exponent(learning);

/** Crawford: time of units 1 to n together, as a ratio of the first. */
export const crawfordTotal = (n: number, learning: PerMille): number => {
  let total = 0;
  for (let unit = 1; unit <= n; unit++) total += crawfordUnit(unit, learning);
  return total;
};

/** Wright: average time of units 1 to n, as a ratio of the first. */
export const wrightAverage = (n: number, learning: PerMille): number => n ** exponent(learning);

/** Wright: time of units 1 to n together, as a ratio of the first. */
export const wrightTotal = (n: number, learning: PerMille): number => n * wrightAverage(n, learning);

/** Wright: time of unit n alone, as a ratio of the first. */
export const wrightUnit = (n: number, learning: PerMille): number => wrightTotal(n, learning) - (n > 1 ? wrightTotal(n - 1, learning) : 0);

/** Factor of a garment by its ordinal in its set, in whole thousandths so that a plan is the same on every machine (Crawford). */
export const learningFactor = (ordinal: number, learning: PerMille): PerMille => Math.round(1000 * crawfordUnit(ordinal, learning));
