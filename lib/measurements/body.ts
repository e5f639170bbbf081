import type { Wearer } from "#lib/casting/wardrobe";
import type { Staging } from "#lib/staging/staging";
import { MEASUREMENTS, type Measurement, type MeasurementSheet, type MeasurementValues } from "./measurement";

/** The figures a garment is cut to. */
export interface Body {
  readonly values: MeasurementValues;
  /** Those that stand on the size group, since they were not taken from the wearer: to be shown, never silent. */
  readonly fallbacks: readonly Measurement[];
  /** The wearer's newest sheet; null when there is none, or no wearer yet. */
  readonly sheet: MeasurementSheet | null;
}

type Figures = Pick<Staging, "measurements">;

/** Newest sheet; of two of one day the later in the list. */
const newest = (sheets: readonly MeasurementSheet[]): MeasurementSheet | null =>
  sheets.reduce<MeasurementSheet | null>((best, sheet) => (best === null || sheet.taken >= best.taken ? sheet : best), null);

/** Values of the wearer's newest sheet; what is missing there, or everything when nobody is cast yet, from the size group. */
export const bodyOf = (staging: Figures, wearer: Pick<Wearer, "performer" | "sizeGroup">): Body => {
  const { performer, sizeGroup } = wearer;
  const sheet =
    performer === null ? null : newest(staging.measurements.filter(({ of }) => "performer" in of && of.performer === performer));
  const group = newest(staging.measurements.filter(({ of }) => "sizeGroup" in of && of.sizeGroup === sizeGroup))?.values ?? {};
  const fallbacks = MEASUREMENTS.filter((name) => sheet?.values[name] === undefined && group[name] !== undefined);
  const values = MEASUREMENTS.flatMap((name) => {
    const value = sheet?.values[name] ?? group[name];
    return value === undefined ? [] : [[name, value] as const];
  });
  return { values: Object.fromEntries(values), fallbacks, sheet };
};
