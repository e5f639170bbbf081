import * as z from "zod";
import type { Fault } from "#lib/exchange/fault";
import { type Cell, readCell } from "#lib/staging/cells/cell";
import { headingOf } from "#lib/staging/column";
import { FILES } from "#lib/staging/files";
import type { Columns, StagingFile, Written } from "#lib/staging/stagingFile";
import type { FileKey } from "#lib/staging/tables";
import type { RowTexts } from "./edit";

export interface ReadRow {
  /** A cell with a fault is absent. */
  readonly values: Readonly<Record<string, unknown>>;
  readonly faults: readonly Omit<Fault, "row">[];
}

const columnsOf = (key: FileKey, written: Written): readonly (readonly [string, Cell<unknown>])[] =>
  Object.entries((FILES[key] as unknown as StagingFile<Columns>).schema(written).shape);

/** The values of a row's cells, and a fault for each that cannot be read. */
export const readRow = (key: FileKey, row: RowTexts, written: Written): ReadRow => {
  const values: Record<string, unknown> = {};
  const faults: Omit<Fault, "row">[] = [];
  for (const [column, cell] of columnsOf(key, written)) {
    const read = readCell(cell, (row[headingOf(column)] ?? "").trim());
    if (read.ok) values[column] = read.value;
    else faults.push({ file: FILES[key].name, column: headingOf(column), ...read.error });
  }
  return { values, faults };
};

/** The same row as the schema writes it, so that `9am` and `09:00` are one; a cell that cannot be read stays as it is. */
export const usualTexts = (key: FileKey, row: RowTexts, written: Written): RowTexts => {
  const { values } = readRow(key, row, written);
  return Object.fromEntries(
    columnsOf(key, written).map(([column, cell]) => {
      const heading = headingOf(column);
      return [heading, column in values ? z.encode(cell, values[column]) : (row[heading] ?? "")];
    }),
  );
};
