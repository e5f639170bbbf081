/**
 * The integers everything is counted in (floating point never reaches money, cloth or time).
 *
 * A length is in eightieths of a millimetre: 1 in = 2032, 1/16 in = 127 and 0.1 mm = 8 are all exact
 * (1 in = 25.4 mm exactly, international yard and pound agreement of 1959).
 */
export type Length = number;
/** Whole minutes of work or of the clock. */
export type Minutes = number;
/** Money in the smallest unit of its currency (pence, cents). */
export type MinorUnits = number;
/** Thousandths: 1000 is "as it is", 750 three quarters. */
export type PerMille = number;

export const LENGTH_PER_MM = 80;
export const LENGTH_PER_INCH = 2032;
export const LENGTH_PER_YARD = 36 * LENGTH_PER_INCH;
