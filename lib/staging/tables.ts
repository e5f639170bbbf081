import type { Fault } from "#lib/exchange/fault";
import { FILES, type Files } from "./files";
import { readTable } from "./readTable";
import type { Columns, RowOf, StagingFile, Written } from "./stagingFile";

export type FileKey = keyof Files;

/** A row of a file as far as it could be read: a cell with a fault is absent. */
export interface Located<R> {
  /** Row of the spreadsheet, the heading being row 1. */
  readonly row: number;
  readonly values: Partial<R>;
}

export type Tables = { readonly [K in FileKey]: readonly Located<RowOf<Files[K]>>[] };

export const FILE_KEYS = Object.keys(FILES) as readonly FileKey[];

const USUAL: Written = { lengths: "in", currency: "GBP" };

/** Reads the CSV files by their names; one that is not there has no rows; `unknown` are those whose rows cannot be told. The production says how lengths and money are written. */
export const readTables = (
  texts: ReadonlyMap<string, string>,
): { readonly tables: Tables; readonly faults: readonly Fault[]; readonly unknown: readonly string[] } => {
  const first = texts.has(FILES.production.name) ? read(FILES.production, texts, USUAL).rows[0]?.values : undefined;
  const written = { ...USUAL, ...first } as Written;
  const tables = FILE_KEYS.map((key) => [key, read(FILES[key] as unknown as StagingFile<Columns>, texts, written)] as const);
  return {
    tables: Object.fromEntries(tables.map(([key, table]) => [key, table.rows])) as unknown as Tables,
    faults: tables.flatMap(([, table]) => table.faults),
    unknown: tables.flatMap(([key, table]) => (table.known ? [] : [FILES[key].name])),
  };
};

const read = <C extends Columns>(file: StagingFile<C>, texts: ReadonlyMap<string, string>, written: Written) => {
  const text = texts.get(file.name);
  return text === undefined ? { rows: [], faults: [], known: true } : readTable(file, text, written);
};
