import { headingOf } from "#lib/staging/column";
import { FILES } from "#lib/staging/files";
import { type WrittenTable, writeTable } from "#lib/staging/fromStaging";
import type { Staging } from "#lib/staging/staging";
import { FILE_KEYS, type FileKey } from "#lib/staging/tables";
import type { RowTexts } from "./edit";

const KEYS: ReadonlyMap<string, FileKey> = new Map(FILE_KEYS.map((key) => [FILES[key].name, key]));

/** Which of a staging's files bears the name `makers.csv`. A name that none bears is a bug. */
export const fileKeyOf = (file: string): FileKey => {
  const key = KEYS.get(file);
  if (key === undefined) throw new Error(`${file} is not a file of a staging`);
  return key;
};

export const rowTexts = ({ headings }: WrittenTable, cells: readonly string[]): RowTexts =>
  Object.fromEntries(headings.map((heading, at) => [heading, cells[at] ?? ""]));

/** Cells in the order of the table; an absent one is empty. */
export const cellsOf = ({ file, headings }: WrittenTable, row: RowTexts): readonly string[] => {
  const unknown = Object.keys(row).find((heading) => !headings.includes(heading));
  if (unknown !== undefined) throw new Error(`${unknown} is not a column of ${file}`);
  return headings.map((heading) => row[heading] ?? "");
};

/** What names a row: its naming cells, or all cells where the file has none. */
export const nameOf = ({ key }: WrittenTable, cells: readonly string[]): string =>
  JSON.stringify(key.length > 0 ? key.map((column) => cells[column]) : cells);

/** The same of a row as a person wrote it: the file and its naming cells, or all of them. */
export const rowName = (file: string, row: RowTexts): string => {
  const { key } = FILES[fileKeyOf(file)];
  const naming = key.length > 0 ? key.map((column) => row[headingOf(column)] ?? "") : Object.values(row);
  return JSON.stringify([file, ...naming]);
};

/** Whether rows say the same. In what order a cell gives its `name=value` pairs says nothing, and a database does not keep it. */
export const sameCells = (one: readonly string[], other: readonly string[]): boolean =>
  one.every((cell, column) => cell === other[column] || inOrder(cell) === inOrder(other[column] ?? ""));

const inOrder = (cell: string): string =>
  cell
    .split(";")
    .map((part) => part.trim())
    .sort()
    .join(";");

/** All rows of a file as a person would write them, in their order. */
export const rowsOf = (staging: Staging, file: string): readonly RowTexts[] => {
  const table = writeTable(staging, fileKeyOf(file));
  return table.rows.map((cells) => rowTexts(table, cells));
};

/** The row of a file that its naming cells name, in the order of the file's key; null when there is none. */
export const rowOf = (staging: Staging, file: string, ...name: readonly string[]): RowTexts | null => {
  const table = writeTable(staging, fileKeyOf(file));
  const found = table.rows.find((cells) => nameOf(table, cells) === JSON.stringify(name));
  return found ? rowTexts(table, found) : null;
};
