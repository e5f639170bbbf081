import type { Fault } from "#lib/exchange/fault";
import { MEASUREMENTS } from "#lib/measurements/measurement";
import { headingOf } from "#lib/staging/column";

const FIELDS: readonly string[] = ["taken", "body", ...MEASUREMENTS];

/** What is wrong, by the name of its field. */
export const sheetFields = (faults: readonly Fault[]): Readonly<Record<string, string>> =>
  Object.fromEntries(
    faults.flatMap(({ column, problem, mend }) => {
      const field = FIELDS.find((name) => headingOf(name) === column);
      return field === undefined ? [] : [[field, `${problem} ${mend}`] as const];
    }),
  );
