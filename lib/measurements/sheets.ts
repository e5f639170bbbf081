import type { Staging } from "#lib/staging/staging";
import type { MeasurementSheet } from "./measurement";

/** Sheets of a performer, the newest first; of two of one day the later in the list is the newer. */
export const sheetsOf = ({ measurements }: Pick<Staging, "measurements">, performer: string): readonly MeasurementSheet[] =>
  measurements
    .map((sheet, at) => ({ sheet, at }))
    .filter(({ sheet: { of } }) => "performer" in of && of.performer === performer)
    .sort((a, b) => (a.sheet.taken === b.sheet.taken ? b.at - a.at : a.sheet.taken < b.sheet.taken ? 1 : -1))
    .map(({ sheet }) => sheet);

/** The staging with a sheet more; one of the same performer and day gives way to it. */
export const withSheet = <S extends Pick<Staging, "measurements">>(staging: S, sheet: MeasurementSheet): S => {
  const same = (one: MeasurementSheet) => one.taken === sheet.taken && JSON.stringify(one.of) === JSON.stringify(sheet.of);
  const at = staging.measurements.findIndex(same);
  const measurements = at < 0 ? [...staging.measurements, sheet] : staging.measurements.with(at, sheet);
  return { ...staging, measurements };
};
