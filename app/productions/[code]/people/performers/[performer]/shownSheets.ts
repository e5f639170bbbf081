import { MEASUREMENTS, type Measurement, type MeasurementSheet } from "#lib/measurements/measurement";
import { sheetsOf } from "#lib/measurements/sheets";
import { type WantedMeasurement, wantedOf } from "#lib/measurements/wanted";
import type { ProductionView } from "../../../../../_data/stagingPlan";
import { type Act, may } from "../../../../../_gate/may";

/** What of a performer's measurements a member is shown. */
export interface ShownSheets {
  /** Rows, in the order of the sheet. */
  readonly measurements: readonly Measurement[];
  /** The newest first; for who makes, the newest only. */
  readonly sheets: readonly MeasurementSheet[];
  readonly wanted: readonly WantedMeasurement[];
  /** Everything, or only what the garments of the performer are cut by. */
  readonly whole: boolean;
}

type Role = Parameters<typeof may>[0];

/**
 * The one definition of who sees which measurement of a performer: who may see sheets whole sees them all over time; who makes sees of the
 * newest what the garments made for the performer are cut by, as a ticket does; anybody else nothing (null).
 */
export const shownSheets = (role: Role, { prepared: { staging, garments } }: ProductionView, performer: string): ShownSheets | null => {
  const see = (act: Act) => may(role, act);
  if (!see("measurements")) return null;
  const wanted = wantedOf(staging, garments, performer);
  const sheets = sheetsOf(staging, performer);
  if (see("sheets")) return { measurements: MEASUREMENTS, sheets, wanted, whole: true };
  const needed = wanted.map(({ measurement }) => measurement);
  return { measurements: needed, sheets: sheets.slice(0, 1).map((sheet) => onlyOf(sheet, needed)), wanted, whole: false };
};

const onlyOf = (sheet: MeasurementSheet, needed: readonly Measurement[]): MeasurementSheet => ({
  ...sheet,
  values: Object.fromEntries(Object.entries(sheet.values).filter(([name]) => needed.some((one) => one === name))),
});
