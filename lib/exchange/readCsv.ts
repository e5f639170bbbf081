import { CsvError, parse } from "csv-parse/sync";
import { failed, ok, type Result } from "#lib/result";
import type { Fault } from "./fault";
import { unguard } from "./guard";
import { MOST_BYTES, MOST_ROWS } from "./limits";

export interface CsvRow {
  /** Row of the spreadsheet, the heading being row 1. */
  readonly row: number;
  /** As many as there are headings. */
  readonly cells: readonly string[];
}

export interface CsvTable {
  readonly headings: readonly string[];
  readonly rows: readonly CsvRow[];
}

/**
 * Reads CSV as spreadsheets save it: commas, semicolons or tabs, CRLF or LF, with or without a byte-order mark, quotes, empty lines.
 * Cells are trimmed and freed of the guard against formulas. Too large, broken quotes, or a row longer than the heading is a fault.
 */
export const readCsv = (file: string, text: string): Result<CsvTable, readonly Fault[]> => {
  const fault = (row: number | null, problem: string, mend: string): Fault => ({ file, row, column: null, problem, mend });
  if (new TextEncoder().encode(text).length > MOST_BYTES)
    return failed([fault(null, "The file is larger than 10 MB.", "Split it, or take out what is not part of the table.")]);
  const records = parseRecords(text);
  if (records instanceof CsvError)
    return failed([
      fault(lineOf(records), "The quotes do not match.", 'Close each quote, and double a quote inside a quoted cell: "15 1/4""".'),
    ]);
  const [headings, ...rest] = records.filter(({ cells }) => cells.some((cell) => cell !== ""));
  if (!headings) return failed([fault(null, "The file is empty.", "Write the headings in the first row.")]);
  if (rest.length > MOST_ROWS || records.length >= 2 * MOST_ROWS)
    return failed([fault(null, "The file has more than 20,000 rows.", "Split it.")]);
  const width = headings.cells.findLastIndex((cell) => cell !== "") + 1;
  const faults: Fault[] = [];
  const rows = rest.map(({ row, cells }) => {
    if (cells.slice(width).some((cell) => cell !== ""))
      faults.push(
        fault(row, `The row has more cells than the ${width} headings.`, "Quote a cell that holds the separator, or add the heading."),
      );
    return { row, cells: Array.from({ length: width }, (_, column) => cells[column] ?? "") };
  });
  return faults.length > 0 ? failed(faults) : ok({ headings: headings.cells.slice(0, width), rows });
};

const parseRecords = (text: string): readonly CsvRow[] | CsvError => {
  try {
    const records: string[][] = parse(text, {
      bom: true,
      delimiter: separatorOf(text),
      relax_column_count: true,
      // A length such as 15 1/4" may stand in a cell without quotes around it.
      relax_quotes: true,
      // Empty lines are let through up to as many again, so that an endless file is not built in memory.
      to: MOST_ROWS * 2,
    });
    return records.map((cells, index) => ({ row: index + 1, cells: cells.map((cell) => unguard(cell.trim())) }));
  } catch (error) {
    if (error instanceof CsvError) return error;
    throw error;
  }
};

const lineOf = (error: CsvError): number | null => (typeof error.lines === "number" ? error.lines : null);

/** The commonest of comma, semicolon and tab in the first line that is not empty, quoted parts left out. */
const separatorOf = (text: string): string => {
  const first = /[^\r\n]*\S[^\r\n]*/.exec(text.slice(0, 100_000))?.[0].replace(/"[^"]*"/g, "") ?? "";
  const count = (separator: string) => first.split(separator).length;
  return [",", ";", "\t"].reduce((best, separator) => (count(separator) > count(best) ? separator : best));
};
