import { LENGTH_PER_MM, LENGTH_PER_YARD } from "#lib/units/quantities";
import type { LengthSystem } from "#lib/units/showLength";
import type { Measure, Quantity } from "./material";

const UNITS: Readonly<Record<LengthSystem, { readonly per: number; readonly name: string }>> = {
  in: { per: LENGTH_PER_YARD, name: "yd" },
  cm: { per: 1000 * LENGTH_PER_MM, name: "m" },
};

/** A quantity in the hundredths of a yard or metre a reader sees, to the nearest; pieces in whole ones. */
export const shownParts = (quantity: Quantity, measure: Measure, system: LengthSystem): number =>
  measure === "count" ? quantity : Math.round((quantity * 100) / UNITS[system].per);

/** `15.22`: shown parts as a figure of a sum. */
export const partsFigure = (parts: number, measure: Measure): string =>
  measure === "count" ? String(parts) : (parts / 100).toFixed(2).replace(/\.?0+$/, "");

/** `15.22 yd`, `13.92 m`, `640`: shown parts with their unit. */
export const showParts = (parts: number, measure: Measure, system: LengthSystem): string =>
  measure === "count" ? String(parts) : `${partsFigure(parts, measure)} ${UNITS[system].name}`;

/** `15.22 yd`, `13.92 m`, `640`: two places, to the nearest. */
export const showQuantity = (quantity: Quantity, measure: Measure, system: LengthSystem): string =>
  showParts(shownParts(quantity, measure, system), measure, system);
