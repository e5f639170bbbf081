import type { Measure, Quantity } from "#lib/materials/material";
import { type LengthSystem, showCloth, showLength } from "#lib/units/showLength";

/** A length off the roll (or `short`, of one piece) or a count, in the reader's units. */
export const showQuantity = (quantity: Quantity, measure: Measure, lengths: LengthSystem, short = false): string => {
  if (measure === "count") return quantity.toLocaleString("en-GB");
  return short ? showLength(quantity, lengths) : showCloth(quantity, lengths);
};
