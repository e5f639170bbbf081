import { LENGTH_PER_MM, LENGTH_PER_YARD } from "#lib/units/quantities";
import type { LengthSystem } from "#lib/units/showLength";
import type { Measure, Quantity } from "./material";

const UNITS: Readonly<Record<LengthSystem, { readonly per: number; readonly name: string }>> = {
  in: { per: LENGTH_PER_YARD, name: "yd" },
  cm: { per: 1000 * LENGTH_PER_MM, name: "m" },
};

/** `15.22`: a quantity as a figure of a sum, in yards, metres or pieces. Two places, to the nearest. */
export const quantityFigure = (quantity: Quantity, measure: Measure, system: LengthSystem): string =>
  measure === "count" ? String(quantity) : (quantity / UNITS[system].per).toFixed(2).replace(/\.?0+$/, "");

/** `15.22 yd`, `13.92 m`, `640`. */
export const showQuantity = (quantity: Quantity, measure: Measure, system: LengthSystem): string =>
  measure === "count" ? String(quantity) : `${quantityFigure(quantity, measure, system)} ${UNITS[system].name}`;
