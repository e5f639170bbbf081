import type { PlainDate } from "#lib/calendar/plainDate";
import type { SizeGroup } from "#lib/casting/casting";
import type { Chance } from "#lib/levelling/random";
import { MEASUREMENTS, type MeasurementSheet, type MeasurementValues } from "#lib/measurements/measurement";
import { LENGTH_PER_MM } from "#lib/units/quantities";
import MEDIANS from "./bodies.json";

/** Bodies of nobody, in centimetres: plausible for a dancer, from no survey. */
export const MEDIAN_BODIES = MEDIANS;

export interface InventedSize extends SizeGroup {
  readonly of: keyof typeof MEDIANS;
  /** Against the median body. */
  readonly scale: number;
}

export const SIZES: readonly InventedSize[] = (["W", "M"] as const).flatMap((of) =>
  [
    { size: "S", name: "small", scale: 0.96 },
    { size: "M", name: "medium", scale: 1 },
    { size: "L", name: "tall", scale: 1.04 },
  ].map(({ size, name, scale }) => ({ code: `${of}${size}`, name: `${of === "W" ? "Women" : "Men"}, ${name}`, of, scale })),
);

/** The figures a size group stands for. */
export const sizeSheet = (size: InventedSize, taken: PlainDate): MeasurementSheet => ({
  of: { sizeGroup: size.code },
  taken,
  body: "not noted",
  values: figures(size, () => size.scale),
});

/** One body of a size group, within two hundredths of it all over. */
export const bodySheet = (performer: string, size: InventedSize, taken: PlainDate, chance: Chance): MeasurementSheet => ({
  of: { performer },
  taken,
  body: "warm",
  values: figures(size, () => size.scale * (0.98 + 0.04 * chance.next())),
});

/** In half centimetres, as a tape is read. */
const figures = ({ of }: InventedSize, scale: () => number): MeasurementValues =>
  Object.fromEntries(MEASUREMENTS.map((name) => [name, Math.round(2 * MEDIANS[of][name] * scale()) * 5 * LENGTH_PER_MM]));
