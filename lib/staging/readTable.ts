import type { Fault } from "#lib/exchange/fault";
import { meant } from "#lib/exchange/nearest";
import { type CsvTable, readCsv } from "#lib/exchange/readCsv";
import { type Cell, readCell } from "./cells/cell";
import { columnNotes, headingOf, plainHeading } from "./column";
import type { Columns, StagingFile, Written } from "./stagingFile";

/** A row of a file as far as it could be read: a cell with a fault is absent. */
export interface ReadRow {
  /** Row of the spreadsheet, the heading being row 1. */
  readonly row: number;
  readonly values: Readonly<Record<string, unknown>>;
}

export interface ReadTable {
  readonly rows: readonly ReadRow[];
  readonly faults: readonly Fault[];
  /** False when it is not known which rows it has: others that refer to it are not to blame. */
  readonly known: boolean;
}

/** Reads every cell of a file by its schema, and gathers all faults rather than the first. */
export const readTable = <C extends Columns>(file: StagingFile<C>, text: string, written: Written): ReadTable => {
  const csv = readCsv(file.name, text);
  if (!csv.ok) return { rows: [], faults: csv.error, known: false };
  const columns: readonly [string, Cell<unknown>][] = Object.entries(file.schema(written).shape);
  const { places, faults } = placeColumns(file.name, columns, csv.value.headings);
  const all = [...faults];
  const rows = csv.value.rows.map(({ row, cells }): ReadRow => {
    const values: Record<string, unknown> = {};
    for (const [key, of] of columns) {
      const place = places.get(key);
      const value = readCell(of, place === undefined ? "" : (cells[place] ?? ""));
      if (value.ok) values[key] = value.value;
      else if (place !== undefined) all.push({ file: file.name, row, column: headingOf(key), ...value.error });
    }
    return { row, values };
  });
  return { rows, faults: all, known: faults.length === 0 };
};

/** Where each column stands; unknown, doubled and missing headings are faults. */
const placeColumns = (file: string, columns: readonly [string, Cell<unknown>][], headings: CsvTable["headings"]) => {
  const places = new Map<string, number>();
  const faults: Fault[] = [];
  const fault = (column: string, problem: string, mend: string) => faults.push({ file, row: 1, column, problem, mend });
  const keyOf = new Map(columns.map(([key]) => [plainHeading(key), key]));
  for (const [place, heading] of headings.entries()) {
    const key = keyOf.get(plainHeading(heading));
    if (key === undefined) {
      const known = columns.map(([each]) => headingOf(each));
      fault(
        heading,
        heading === "" ? "A column has no heading." : `"${heading}" is not a column of ${file}.`,
        meant(heading, known, "Take the column out."),
      );
    } else if (places.has(key)) fault(heading, `"${heading}" stands there twice.`, "Keep one of the two columns.");
    else places.set(key, place);
  }
  for (const [key, of] of columns)
    if (!places.has(key) && columnNotes.get(of)?.empty === undefined)
      fault(headingOf(key), `The column ${headingOf(key)} is missing.`, `Add it, for example with ${columnNotes.get(of)?.example}.`);
  return { places, faults };
};
