import type { Value } from "#lib/constructions/evaluate";
import type { Unit } from "#lib/constructions/expression";
import { LENGTH_PER_MM, LENGTH_PER_YARD, type Length } from "#lib/units/quantities";
import { showLength } from "#lib/units/showLength";
import type { Reader } from "./reader";

const ORDINALS = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth"];

/** `third`, `24th`. */
export const sayOrdinal = (ordinal: number): string => {
  const teen = ordinal % 100 >= 11 && ordinal % 100 <= 13;
  const ending = teen ? "th" : (["th", "st", "nd", "rd"][ordinal % 10] ?? "th");
  return ORDINALS[ordinal - 1] ?? `${ordinal}${ending}`;
};

/** At most two places, with no zeros at the end. */
export const sayNumber = (value: number): string => String(Math.round(value * 100) / 100);

/** `3 min 30 s`, `45 min`, `18 s`. */
export const saySeconds = (seconds: number): string => {
  const minutes = Math.floor(seconds / 60);
  const rest = sayNumber(seconds - minutes * 60);
  if (minutes === 0) return `${rest} s`;
  return rest === "0" ? `${minutes} min` : `${minutes} min ${rest} s`;
};

/** A long length: `82.3 m`, and for a reader in inches `82.3 m (90 yd)`, since rates are for a metre. */
export const sayMetres = (length: Length, reader: Reader): string => {
  const metres = `${sayNumber(length / (1000 * LENGTH_PER_MM))} m`;
  return reader.lengths === "cm" ? metres : `${metres} (${sayNumber(length / LENGTH_PER_YARD)} yd)`;
};

/** A figure in a formula, in the reader's units. */
export const sayValue = (value: Value, unit: Unit, reader: Reader): string => {
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (typeof value === "string") return value;
  if (unit !== "length") return sayNumber(value);
  return value > 3 * LENGTH_PER_YARD ? sayMetres(value, reader) : showLength(Math.round(value), reader.lengths);
};
