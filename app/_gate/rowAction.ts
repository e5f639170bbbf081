import { z } from "zod";
import type { RowChange, RowTexts } from "#lib/editing/edit";
import { newCode } from "#lib/editing/newCode";
import { ok } from "#lib/result";
import type { Staging } from "#lib/staging/staging";
import type { Action } from "./action";
import { type Edited, editAction } from "./editAction";
import { jsonOf } from "./editInput";
import type { Act } from "./may";

export const CELL = "cell.";

const texts = z.record(z.string(), z.string());

/** The fields of a `RowForm`: cells by heading, the row as it was seen (none: it is new), and whether it is taken out. */
const rowFields = z.looseObject({ row: jsonOf(texts.nullable()).optional(), press: z.string().default("") }).transform((form) => ({
  row: form.row ?? null,
  out: form.press === "out",
  cells: Object.fromEntries(
    Object.entries(form).flatMap(([name, value]) =>
      name.startsWith(CELL) && typeof value === "string" ? [[name.slice(CELL.length), value]] : [],
    ),
  ),
}));

interface RowAction {
  readonly act: Act;
  readonly file: string;
  /** In the history, of the row as it shall be, or as it was when it is taken out. */
  readonly title: (row: RowTexts) => string;
  /** Page to go on to. */
  readonly to?: (row: RowTexts, production: string, out: boolean) => string;
  /** Further changes that taking the row out needs. */
  readonly outWith?: (staging: Staging, row: RowTexts) => readonly RowChange[];
}

/** The action of a `RowForm`: adds, changes or takes out one row of a file. A new row with a name and without a code is given one. */
export const rowAction = ({ act, file, title, to, outWith }: RowAction): Action<Edited> =>
  editAction<typeof rowFields>({
    act,
    input: rowFields,
    make: (staging, { row, out, cells }) => {
      if (out && row)
        return ok({ title: `${title(row)}, taken out`, changes: [...(outWith?.(staging, row) ?? []), { file, before: row, after: null }] });
      const written = { ...row, ...cells };
      const after =
        !row && "code" in written && written.code === "" ? { ...written, code: newCode(staging, file, written.name ?? "") } : written;
      return ok({ title: row ? title(after) : `${title(after)}, added`, changes: [{ file, before: row, after }] });
    },
    to: to && (({ row, cells, out }, production) => to({ ...row, ...cells }, production, out)),
    fieldOf: (fault, { cells }) => (fault.file === file && fault.column !== null && fault.column in cells ? CELL + fault.column : null),
  });
