import { LENGTH_PER_MM, type Length } from "#lib/units/quantities";
import LIMITS from "./limits.json";
import type { Measurement } from "./measurement";

/**
 * Least and most a tape can show, from a child of five to the largest adult (limits from memory, in centimetres; adults checked against
 * a published survey): beyond them the unit is wrong, not the body.
 */
export const limitsOf = (name: Measurement): { readonly least: Length; readonly most: Length } => {
  const [least = 0, most = 0] = LIMITS[name];
  return { least: least * 10 * LENGTH_PER_MM, most: most * 10 * LENGTH_PER_MM };
};

export const isPlausible = (name: Measurement, value: Length): boolean => {
  const { least, most } = limitsOf(name);
  return least <= value && value <= most;
};
