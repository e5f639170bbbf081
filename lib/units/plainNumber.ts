/** A number as a ratio of integers, so that nothing is lost before the one rounding. */
export interface Ratio {
  readonly over: number;
  readonly under: number;
}

const VULGAR: Readonly<Record<string, string>> = {
  "¼": "1/4",
  "½": "1/2",
  "¾": "3/4",
  "⅓": "1/3",
  "⅔": "2/3",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  "⅙": "1/6",
  "⅚": "5/6",
  "⅕": "1/5",
};

/** `15¼` becomes `15 1/4`, typographic quotes and primes become plain ones, all kinds of space become one. */
export const plainText = (text: string): string =>
  text
    .replace(/[¼½¾⅓⅔⅛⅜⅝⅞⅙⅚⅕]/g, (sign) => ` ${VULGAR[sign]}`)
    .replace(/[″“”]|''|’’|′′/g, '"')
    .replace(/[′’‘]/g, "'")
    .replace(/⁄/g, "/")
    .replace(/\s+/gu, " ")
    .trim();

const DECIMAL = /^(\d{1,6})(?:[.,](\d{1,4}))?$/;
const POINT_FIRST = /^[.,](\d{1,4})$/;
const FRACTION = /^(?:(\d{1,6})[ -])?(\d{1,3})\/(\d{1,3})$/;

/**
 * Reads `15`, `15.25`, `15,25`, `.5`, `3/8`, `15 1/4` or `15-1/4` (after `plainText`); null when it is none of them.
 * At most six digits before and four after the point, so that every product stays an exact integer.
 */
export const readRatio = (text: string): Ratio | null => {
  const fraction = FRACTION.exec(text);
  if (fraction) {
    const under = Number(fraction[3]);
    return under === 0 ? null : { over: Number(fraction[1] ?? 0) * under + Number(fraction[2]), under };
  }
  const decimal = DECIMAL.exec(text) ?? (POINT_FIRST.test(text) ? DECIMAL.exec(`0${text}`) : null);
  if (!decimal) return null;
  const places = decimal[2] ?? "";
  return { over: Number(decimal[1] + places), under: 10 ** places.length };
};

/** A comma and exactly three digits may be thousands or a decimal: nobody can tell. */
export const hasDoubtfulComma = (text: string): boolean => /\d,\d{3}(?!\d)/.test(text);

/** `ratio` x `factor` to the nearest integer, halves upward. Exact for any `factor` up to 80 000. */
export const scaled = (ratio: Ratio, factor: number): number => Math.floor((2 * ratio.over * factor + ratio.under) / (2 * ratio.under));
