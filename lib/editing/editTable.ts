import type { Fault } from "#lib/exchange/fault";
import { rowsOfFiles, type WrittenTable, writeTable } from "#lib/staging/fromStaging";
import type { Staging } from "#lib/staging/staging";
import type { Written } from "#lib/staging/stagingFile";
import type { FileKey } from "#lib/staging/tables";
import type { RowChange, RowConflict, RowTexts } from "./edit";
import { readRow, usualTexts } from "./readRow";
import { cellsOf, fileKeyOf, nameOf, rowTexts, sameCells } from "./rows";

interface EditedRow {
  /** As far as they could be read. */
  readonly values: Readonly<Record<string, unknown>>;
  /** Place the row had; null for an added one. */
  readonly from: number | null;
  /** It was added or changed. */
  readonly isNew: boolean;
  readonly faults: readonly Omit<Fault, "row">[];
}

export interface EditedTable {
  readonly rows: readonly EditedRow[];
  /** Places that the rows taken out had. */
  readonly taken: readonly number[];
  readonly conflicts: readonly RowConflict[];
  readonly faults: readonly Fault[];
}

/** The rows of one file after the changes to it, as far as they can be made and read. */
export const editTable = (staging: Staging, key: FileKey, changes: readonly RowChange[]): EditedTable => {
  const table = writeTable(staging, key);
  const own = changes.filter(({ file }) => fileKeyOf(file) === key);
  const { changed, conflicts } = findRows(table, key, staging.production, own);
  const rows: EditedRow[] = [];
  const add = (after: RowTexts, from: number | null, at: number) => {
    const written = key === "production" ? writtenBy(after, staging.production) : staging.production;
    cellsOf(table, after);
    rows.splice(at, 0, { ...readRow(key, after, written), from, isNew: true });
  };
  const values = rowsOfFiles(staging)[key] as readonly Readonly<Record<string, unknown>>[];
  for (const [from, value] of values.entries()) {
    const change = changed.get(from);
    if (!change) rows.push({ values: value, from, isNew: false, faults: [] });
    else if (change.after) add(change.after, from, rows.length);
  }
  const last = rows.length + own.length;
  const added = own.filter(({ before }) => before === null).toSorted((a, b) => (a.at ?? last) - (b.at ?? last));
  for (const { after, at } of added) if (after) add(after, null, Math.min(at ?? rows.length, rows.length));
  const taken = [...changed].filter(([, { after }]) => after === null).map(([at]) => at);
  const faults = rows.flatMap((row, at) => row.faults.map((fault) => ({ ...fault, row: at + 2 })));
  return { rows, taken: taken.toSorted((a, b) => a - b), conflicts, faults };
};

/** Which change is of which row, and those whose row is another by now. */
const findRows = (table: WrittenTable, key: FileKey, written: Written, changes: readonly RowChange[]) => {
  const places = new Map<string, number[]>();
  for (const [at, cells] of table.rows.entries()) places.set(nameOf(table, cells), [...(places.get(nameOf(table, cells)) ?? []), at]);
  const changed = new Map<number, RowChange>();
  const conflicts: RowConflict[] = [];
  for (const mine of changes) {
    if (mine.before === null) continue;
    const cells = cellsOf(table, usualTexts(key, mine.before, written));
    const free = places.get(nameOf(table, cells))?.filter((place) => !changed.has(place)) ?? [];
    // Of rows that are alike the one at its place is meant.
    const at = free.find((place) => place === mine.at) ?? free[0];
    const theirs = at === undefined ? undefined : table.rows[at];
    if (at !== undefined && theirs && sameCells(theirs, cells)) changed.set(at, mine);
    else conflicts.push({ mine, theirs: theirs ? rowTexts(table, theirs) : null });
  }
  return { changed, conflicts };
};

/** A production's own row says how its money and lengths are written. */
const writtenBy = (row: RowTexts, before: Written): Written => {
  const { values } = readRow("production", { ...row, budget: "" }, before);
  return { ...before, ...(values as Partial<Written>) };
};
