import { unzipSync, zipSync } from "fflate";
import writeExcelFile, { type Cell } from "write-excel-file/universal";
import type { PlainDate } from "#lib/calendar/plainDate";

/** Text, a whole number, a day, or an amount with so many decimals (`{ amount: 12.5, places: 2 }` shows 12.50); null is an empty cell. */
export type XlsxCell = string | number | null | { readonly day: PlainDate } | { readonly amount: number; readonly places: number };

/** One sheet of a workbook: the tables of `lib/sheets` are ones too. */
export interface XlsxSheet {
  readonly name: string;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly XlsxCell[])[];
}

/** The longest text a cell may hold, and the longest name of a sheet (ECMA-376; the limits every spreadsheet keeps, from memory). */
const MOST_TEXT = 32_767;
const MOST_NAME = 31;

/**
 * A workbook, one sheet a table: headings bold and held in sight, numbers and days as such, so that a spreadsheet can add and sort them.
 * Text is never a formula, whatever it begins with. The same tables always give the same bytes.
 */
export const writeXlsx = async (sheets: readonly XlsxSheet[]): Promise<Uint8Array> => {
  const names = sheetNames(sheets.map(({ name }) => name));
  const blob = await writeExcelFile(
    sheets.map(({ headings, rows }, at) => ({
      sheet: names[at]!,
      stickyRowsCount: 1,
      columns: headings.map((heading, column) => ({ width: widthOf([heading, ...rows.map((row) => row[column] ?? null)]) })),
      data: [
        headings.map((heading): Cell => ({ value: heading, type: String, fontWeight: "bold" })),
        ...rows.map((row) => row.map(cellOf)),
      ],
    })),
  ).toBlob();
  // The library writes the clock into the zip; a fixed day there makes equal tables equal files.
  return zipSync(unzipSync(new Uint8Array(await blob.arrayBuffer())), { mtime: new Date(1980, 0, 1) });
};

const cellOf = (cell: XlsxCell): Cell => {
  if (cell === null || cell === "") return null;
  if (typeof cell === "number") return { value: cell, type: Number };
  if (typeof cell === "string") return { value: textOf(cell), type: String };
  if ("day" in cell) return { value: new Date(`${cell.day}T00:00:00Z`), type: Date, format: "yyyy-mm-dd" };
  return { value: cell.amount, type: Number, format: cell.places > 0 ? `0.${"0".repeat(cell.places)}` : "0" };
};

/** Without the control characters XML cannot hold, and no longer than a cell may be. */
const textOf = (text: string): string => {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to take out.
  const clean = text.replaceAll(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, "");
  return clean.length > MOST_TEXT ? `${clean.slice(0, MOST_TEXT - 1)}…` : clean;
};

const widthOf = (cells: readonly XlsxCell[]): number => {
  const longest = cells.reduce<number>((most, cell) => {
    if (cell === null) return most;
    return Math.max(most, typeof cell === "object" ? 12 : String(cell).length);
  }, 0);
  return Math.min(60, Math.max(8, longest + 2));
};

/** Names a spreadsheet takes: without `[]:*?/\`, at most 31 long, no two alike. */
const sheetNames = (wanted: readonly string[]): readonly string[] => {
  const taken = new Set<string>();
  return wanted.map((name) => {
    const plain =
      name
        .replaceAll(/[[\]:*?/\\]/g, " ")
        .trim()
        .slice(0, MOST_NAME) || "Sheet";
    let own = plain;
    for (let copy = 2; taken.has(own.toLowerCase()); copy++) own = `${plain.slice(0, MOST_NAME - 1 - String(copy).length)} ${copy}`;
    taken.add(own.toLowerCase());
    return own;
  });
};
