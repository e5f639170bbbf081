import type { Fault } from "#lib/exchange/fault";
import { nearest } from "#lib/exchange/nearest";
import { failed, ok, type Result } from "#lib/result";
import { type Cell, readCell } from "#lib/staging/cells/cell";
import { headingOf, plainHeading } from "#lib/staging/column";
import { measurements } from "#lib/staging/files/measurements";
import type { Written } from "#lib/staging/stagingFile";
import { words } from "#lib/words/words";
import { MEASUREMENTS, type MeasurementSheet } from "./measurement";

/** Texts of a sheet by column: `taken`, `body` and the measurements by their names in code. */
export type SheetTexts = Readonly<Record<string, string>>;

const COLUMNS: readonly string[] = ["taken", "body", ...MEASUREMENTS];
const LATIN: Readonly<Record<string, string>> = { date: "taken", day: "taken", state: "body", chest: "bust", inseam: "insideLeg" };

/** Where in the paste a cell stands, for faults. */
const FAULTS_OF = "pasted row";

/**
 * Cells of a row copied from a spreadsheet, by column. With two lines the first is the headings, in any order and as the file or the
 * screen spells them; a single line is in the order of the sheet: day, state of the body, then each measurement.
 */
export const pastedTexts = (text: string): Result<SheetTexts, readonly Fault[]> => {
  const lines = text
    .replace(/\r\n?/g, "\n")
    .split("\n")
    .filter((line) => line.trim() !== "")
    .map((line) => line.split("\t").map((cell) => cell.trim()));
  const fault = (row: number | null, column: string | null, problem: string, mend: string): Fault => ({
    file: FAULTS_OF,
    row,
    column,
    problem,
    mend,
  });
  const [first, second, ...more] = lines;
  if (!first) return failed([fault(null, null, "Nothing was pasted.", "Copy a row of the spreadsheet, with its headings if you can.")]);
  if (more.length > 0) return failed([fault(3, null, "There are more than two lines.", "Paste the headings and one row.")]);
  if (!second) return ok(byColumn(COLUMNS, first));
  const faults: Fault[] = [];
  const keys = first.map((heading) => {
    const key = columnMeant(heading);
    if (key === undefined && heading !== "") {
      const like = nearest(heading, COLUMNS.map(headingOf));
      faults.push(fault(1, heading, "No measurement has this name.", like ? `Did you mean "${like}"?` : "Take the column out."));
    }
    return key;
  });
  const doubled = keys.find((key, at) => key !== undefined && keys.indexOf(key) !== at);
  if (doubled) faults.push(fault(1, headingOf(doubled), "It stands there twice.", "Keep one of the two columns."));
  return faults.length > 0 ? failed(faults) : ok(byColumn(keys, second));
};

const byColumn = (keys: readonly (string | undefined)[], cells: readonly string[]): SheetTexts =>
  Object.fromEntries(keys.flatMap((key, at) => (key !== undefined && (cells[at] ?? "") !== "" ? [[key, cells[at]!] as const] : [])));

const columnMeant = (heading: string): string | undefined => {
  const wanted = plainHeading(heading);
  const label = (key: string) =>
    (["uk", "us"] as const).some((usage) => {
      const full = words(usage).measurements[key as keyof ReturnType<typeof words>["measurements"]] ?? "";
      return plainHeading(full) === wanted || plainHeading(full.split(/[,:]/)[0] ?? "") === wanted;
    });
  return (
    COLUMNS.find((key) => plainHeading(key) === wanted) ??
    LATIN[wanted] ??
    COLUMNS.find((key) => MEASUREMENTS.some((one) => one === key) && label(key))
  );
};

/** A sheet of a performer from its texts, judged as the file judges it; all faults at once, by column. */
export const sheetFrom = (texts: SheetTexts, performer: string, written: Written): Result<MeasurementSheet, readonly Fault[]> => {
  const shape = measurements.schema(written).shape;
  const faults: Fault[] = [];
  const value = <T>(key: string, of: Cell<T>): T | undefined => {
    const read = readCell<T>(of, texts[key] ?? "");
    if (!read.ok) faults.push({ file: FAULTS_OF, row: null, column: headingOf(key), ...read.error });
    return read.ok ? read.value : undefined;
  };
  const [taken, body] = [value("taken", shape.taken), value("body", shape.body)];
  const values = MEASUREMENTS.map((name) => [name, value(name, shape[name])] as const).filter(([, length]) => typeof length === "number");
  if (faults.length > 0 || taken === undefined || body === undefined) return failed(faults);
  if (values.length === 0)
    return failed([{ file: FAULTS_OF, row: null, column: null, problem: "No measurement is filled in.", mend: "Fill in what was taken." }]);
  return ok({ of: { performer }, taken, body, values: Object.fromEntries(values) });
};
