import type { Measure, Quantity } from "#lib/materials/material";
import { readLength } from "#lib/units/readLength";
import type { LengthSystem } from "#lib/units/showLength";

export type ReadQuantity = { readonly quantity: Quantity; readonly wrong: null } | { readonly quantity: null; readonly wrong: string };

const wrong = (sentence: string): ReadQuantity => ({ quantity: null, wrong: sentence });

/** What a person typed for a material: a length (a bare number is yards or metres, by the reader's units) or a count. `least` is in its unit. */
export const readQuantity = (text: string, measure: Measure, lengths: LengthSystem, least = 1): ReadQuantity => {
  if (measure === "count") {
    const count = /^\d{1,9}$/.test(text.trim()) ? Number(text) : Number.NaN;
    return count >= least ? { quantity: count, wrong: null } : wrong(`Write a whole number from ${least}.`);
  }
  const read = readLength(text, lengths === "in" ? "yd" : "m");
  if (!read.ok) return wrong(`${read.error.problem} ${read.error.mend}`);
  return read.value >= least ? { quantity: read.value, wrong: null } : wrong("Write more than nothing.");
};
