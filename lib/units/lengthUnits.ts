import { LENGTH_PER_INCH, LENGTH_PER_MM, LENGTH_PER_YARD } from "./quantities";

/** Units a length may be written in, with the `Length` of one. Foot, inch and yard follow the 1959 agreement: all exact. */
export const LENGTH_UNITS = {
  mm: { length: LENGTH_PER_MM, metric: true },
  cm: { length: 10 * LENGTH_PER_MM, metric: true },
  m: { length: 1000 * LENGTH_PER_MM, metric: true },
  in: { length: LENGTH_PER_INCH, metric: false },
  ft: { length: 12 * LENGTH_PER_INCH, metric: false },
  yd: { length: LENGTH_PER_YARD, metric: false },
} as const;
export type LengthUnit = keyof typeof LENGTH_UNITS;

const SPELLINGS: Readonly<Record<LengthUnit, readonly string[]>> = {
  mm: ["mm", "millimetre", "millimetres", "millimeter", "millimeters"],
  cm: ["cm", "cms", "centimetre", "centimetres", "centimeter", "centimeters"],
  m: ["m", "metre", "metres", "meter", "meters"],
  in: ["in", "ins", "inch", "inches", '"'],
  ft: ["ft", "foot", "feet", "'"],
  yd: ["yd", "yds", "yard", "yards"],
};

const BY_SPELLING: ReadonlyMap<string, LengthUnit> = new Map(
  (Object.keys(SPELLINGS) as LengthUnit[]).flatMap((unit) => SPELLINGS[unit].map((spelling) => [spelling, unit] as const)),
);

/** Unit by any of its spellings in lower case; undefined when it is none. */
export const lengthUnitOf = (spelling: string): LengthUnit | undefined => BY_SPELLING.get(spelling);
