import { ok, type Result } from "#lib/result";
import { LENGTH_UNITS, type LengthUnit, lengthUnitOf } from "./lengthUnits";
import { hasDoubtfulComma, plainText, readRatio, scaled } from "./plainNumber";
import type { Length } from "./quantities";
import { type Unreadable, unreadable } from "./unreadable";

const TERM = /^([\d.,/ -]*\d)\s*([a-z]+|["'])?\.?\s*(?:,\s+|and\s+)?/i;
const EXAMPLES = 'Write it like 15 1/4 in, 15 1/4", 38.7 cm, 5 ft 3 in, 1 yd 6 in or 2 m.';
/** A kilometre: longer is a slip of the pen. */
const LONGEST = 1_000_000 * LENGTH_UNITS.mm.length;

interface Term {
  readonly number: string;
  readonly unit: LengthUnit | null;
}

/**
 * Reads a length as people write it, in either system: `15 1/4 in`, `15¼"`, `38,7 cm`, `1 yd 6 in`, `5'3"`, `2 m`.
 * A number with no unit takes `assumed`; without one it is ambiguous and refused, and so is a fraction where centimetres are assumed.
 * Rounded once to the nearest eightieth of a millimetre, halves upward; inches to the sixteenth and tenths of a millimetre are exact.
 */
export const readLength = (text: string, assumed: LengthUnit | null = null): Result<Length, Unreadable> => {
  const plain = plainText(text);
  const terms = splitTerms(plain);
  if (!terms) return unreadable(`"${text}" is not a length.`, EXAMPLES);
  if (hasDoubtfulComma(plain))
    return unreadable(`The comma in "${text}" may mark thousands or a decimal.`, "Write a point for decimals and no thousands mark.");
  let total = 0;
  let above: LengthUnit | null = null;
  for (const term of terms) {
    const unit: LengthUnit | null = term.unit ?? (terms.length === 1 ? assumed : null);
    if (!unit) return withoutUnit(text, term.number);
    if (!term.unit && term.number.includes("/") && LENGTH_UNITS[unit].metric) return withoutUnit(text, term.number);
    if (above && !follows(above, unit)) return unreadable(`"${text}" mixes units.`, EXAMPLES);
    const ratio = readRatio(term.number);
    if (!ratio) return unreadable(`"${term.number}" in "${text}" is not a number.`, EXAMPLES);
    total += scaled(ratio, LENGTH_UNITS[unit].length);
    above = unit;
  }
  return total > LONGEST ? unreadable(`"${text}" is longer than a kilometre.`, "Check the unit.") : ok(total);
};

const splitTerms = (plain: string): readonly Term[] | null => {
  const terms: Term[] = [];
  let rest = plain;
  while (rest !== "") {
    const found = TERM.exec(rest);
    if (!found?.[1]) return null;
    const unit = found[2] ? lengthUnitOf(found[2].toLowerCase()) : null;
    if (unit === undefined) return null;
    terms.push({ number: found[1].trim(), unit });
    rest = rest.slice(found[0].length);
  }
  return terms.length > 0 && terms.length <= 3 ? terms : null;
};

/** Smaller unit after larger, in one system. */
const follows = (above: LengthUnit, unit: LengthUnit): boolean =>
  LENGTH_UNITS[above].metric === LENGTH_UNITS[unit].metric && LENGTH_UNITS[above].length > LENGTH_UNITS[unit].length;

const withoutUnit = (text: string, number: string) =>
  unreadable(
    text.trim() === number ? `"${text}" has no unit.` : `"${number}" in "${text}" has no unit.`,
    `Write ${number} in or ${number.includes("/") ? "the same in centimetres, like 38.7 cm" : `${number} cm`}.`,
  );
