import { headingOf } from "#lib/staging/column";
import { FILES } from "#lib/staging/files";
import type { RowChange, RowTexts } from "./edit";
import { fileKeyOf } from "./rows";

/** A change of a row as it is read: what the row is called, and each cell that differs. */
export interface ChangedRow {
  readonly file: string;
  readonly kind: "added" | "changed" | "taken out";
  readonly name: string;
  /** Of a changed row those that differ, of another those that say something. */
  readonly cells: readonly { readonly heading: string; readonly before: string; readonly after: string }[];
}

export const changedRow = ({ file, before, after }: RowChange): ChangedRow => {
  const some = after ?? before ?? {};
  const cells = Object.keys(some).map((heading) => ({ heading, before: before?.[heading] ?? "", after: after?.[heading] ?? "" }));
  return {
    file,
    kind: before === null ? "added" : after === null ? "taken out" : "changed",
    name: calledIn(file, some),
    cells: cells.filter((cell) => cell.before !== cell.after),
  };
};

/** What a person calls a row: its name or title, else the cells that name it, else the first that say something. */
const calledIn = (file: string, row: RowTexts): string => {
  const { key } = FILES[fileKeyOf(file)];
  const naming = key.map((column) => row[headingOf(column)] ?? "").filter((cell) => cell !== "");
  const first = Object.values(row)
    .filter((cell) => cell !== "")
    .slice(0, 3);
  return row.name || row.title || (naming.length > 0 ? naming : first).join(", ");
};
