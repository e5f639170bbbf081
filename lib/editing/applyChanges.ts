import type { Fault } from "#lib/exchange/fault";
import { failed, ok, type Result } from "#lib/result";
import { checkTables } from "#lib/staging/checkTables";
import { rowsOfFiles, writeTable } from "#lib/staging/fromStaging";
import type { Staging } from "#lib/staging/staging";
import type { FileKey, Tables } from "#lib/staging/tables";
import type { EditRefusal, RowChange } from "./edit";
import { type EditedTable, editTable } from "./editTable";
import { fileKeyOf, rowTexts, sameCells } from "./rows";

export interface Applied {
  readonly staging: Staging;
  /** What was changed, as the files write it and with the places of rows: what `inverse` takes back. A change that changes nothing is left out. */
  readonly changes: readonly RowChange[];
}

/**
 * The staging after some of its rows were added, changed or taken out, all at once. A row to be changed is found by the cells that name it
 * (by all its cells in a file without names) and must still be what `before` says; otherwise nothing is changed and the conflicts are
 * returned. Cells are read, and the whole staging is checked, by the rules of an import; faults name file, row, column and mend.
 */
export const applyChanges = (staging: Staging, changes: readonly RowChange[]): Result<Applied, EditRefusal> => {
  const files = [...new Set(changes.map(({ file }) => fileKeyOf(file)))];
  const edited = files.map((key) => [key, editTable(staging, key, changes)] as const);
  const conflicts = edited.flatMap(([, table]) => table.conflicts);
  if (conflicts.length > 0) return failed({ kind: "conflict", conflicts });
  const checked = checkTables(tablesWith(staging, edited), staging.constructions, [
    ...edited.flatMap(([, table]) => table.faults),
    ...edited.flatMap(([key, table]) => (key === "production" ? otherProduction(staging, table) : [])),
  ]);
  if (!checked.ok) return failed({ kind: "faults", faults: checked.error });
  return ok({ staging: checked.value, changes: edited.flatMap(([key, table]) => changesDone(staging, checked.value, key, table)) });
};

/** Rows of files that were not edited are as they were, without being written and read again. */
const tablesWith = (staging: Staging, edited: readonly (readonly [FileKey, EditedTable])[]): Tables => {
  const located = Object.entries(rowsOfFiles(staging)).map(
    ([key, rows]) => [key, (rows as readonly object[]).map((values, at) => ({ row: at + 2, values }))] as const,
  );
  const changed = edited.map(([key, { rows }]) => [key, rows.map(({ values }, at) => ({ row: at + 2, values }))] as const);
  return Object.fromEntries([...located, ...changed]) as unknown as Tables;
};

/** Everything refers to the production by its code, and to makers by its workroom. */
const otherProduction = ({ production }: Staging, { rows }: EditedTable): readonly Fault[] =>
  (["code", "workroom"] as const).flatMap((column): readonly Fault[] => {
    const written = rows[0]?.values[column];
    if (rows.length !== 1 || written === undefined || written === production[column]) return [];
    const problem = `The ${column} of a production stays: it was "${production[column]}".`;
    return [{ file: "production.csv", row: 2, column, problem, mend: "Bring the staging in as another production instead." }];
  });

const changesDone = (before: Staging, after: Staging, key: FileKey, { rows, taken }: EditedTable): readonly RowChange[] => {
  const was = writeTable(before, key);
  const is = writeTable(after, key);
  const texts = (table: typeof was, at: number) => rowTexts(table, table.rows[at]!);
  const out = taken.map((at): RowChange => ({ file: was.file, before: texts(was, at), after: null, at }));
  const kept = rows.flatMap(({ from, isNew }, at): readonly RowChange[] => {
    if (!isNew) return [];
    if (from === null) return [{ file: is.file, before: null, after: texts(is, at), at }];
    const change = { file: is.file, before: texts(was, from), after: texts(is, at) };
    return sameCells(was.rows[from]!, is.rows[at]!) ? [] : [change];
  });
  return [...out, ...kept];
};
