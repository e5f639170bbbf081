import type { Construction } from "./construction";
import { type Draft, drafted } from "./draft";
import type { RowAct, RowList } from "./rowActs";

/** The construction after rows were copied and taken out, one after the other. */
export const withRowActs = (construction: Construction, acts: readonly RowAct[]): Construction =>
  acts.reduce(
    (changed, { act, list, at }) => (act === "copy" ? withRowCopied(changed, list, at) : withoutRow(changed, list, at)).construction,
    construction,
  );

/** The draft with one row of a list copied beneath itself, under a code of its own where rows have codes. */
export const withRowCopied = (construction: Construction, list: RowList, at: number): Draft => {
  const rows = construction[list] as readonly object[];
  const row = rows[at];
  return row === undefined ? drafted(construction) : drafted({ ...construction, [list]: rows.toSpliced(at + 1, 0, renamed(row, rows)) });
};

/** The draft without one row of a list. */
export const withoutRow = (construction: Construction, list: RowList, at: number): Draft =>
  drafted({ ...construction, [list]: (construction[list] as readonly object[]).toSpliced(at, 1) });

const renamed = (row: object, rows: readonly object[]): object => {
  const name = "code" in row ? "code" : "role" in row ? "role" : null;
  if (name === null) return row;
  const taken = new Set(rows.map((each) => (each as Record<string, unknown>)[name]));
  const was = String((row as Record<string, unknown>)[name]);
  let number = 2;
  while (taken.has(`${was}${number}`)) number++;
  return { ...row, [name]: `${was}${number}` };
};
