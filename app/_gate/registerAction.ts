import { z } from "zod";
import type { RowChange, RowTexts } from "#lib/editing/edit";
import { ok } from "#lib/result";
import type { Action } from "./action";
import { type Edited, editAction } from "./editAction";
import { jsonOf } from "./editInput";
import type { Act } from "./may";

/** Name of the field of a cell in a `RegisterSheet`. */
export const cellField = (row: number, heading: string): string => `r${row}.${heading}`;

const FIELD = /^r(\d{1,4})\.([a-z_]+)$/;

/** The fields of a `RegisterSheet`: its rows as they were seen, its cells by row and heading, and the rows ticked to be taken out. */
const sheetFields = z.looseObject({ seen: jsonOf(z.array(z.record(z.string(), z.string()))) }).transform(({ seen, ...form }) => {
  const rows = new Map<number, Record<string, string>>();
  for (const [name, value] of Object.entries(form)) {
    const [, row, heading] = FIELD.exec(name) ?? [];
    if (row === undefined || heading === undefined || typeof value !== "string") continue;
    rows.set(Number(row), { ...rows.get(Number(row)), [heading]: value.trim() });
  }
  const lines = [...rows]
    .sort(([a], [b]) => a - b)
    .map(([at, cells]) => ({ at, before: seen[at] ?? null, cells, out: form[`out.${at}`] !== undefined }));
  return { lines, whole: form.whole === "yes" };
});

interface RegisterAction {
  readonly act: Act;
  readonly file: string;
  /** In the history: `Machines`. */
  readonly title: string;
  /** Cells that the sheet does not show, for new rows. */
  readonly added?: RowTexts;
}

/** The action of a `RegisterSheet`: all that was typed into the sheet is kept as one edit, and taken back as one. */
export const registerAction = ({ act, file, title, added }: RegisterAction): Action<Edited> =>
  editAction({
    act,
    input: sheetFields,
    make: (_, { lines }) => {
      const changes = lines.flatMap(({ before, cells, out }): readonly RowChange[] => {
        if (before)
          return out ? [{ file, before, after: null }] : differs(before, cells) ? [{ file, before, after: { ...before, ...cells } }] : [];
        return !out && Object.values(cells).some((cell) => cell !== "") ? [{ file, before: null, after: { ...added, ...cells } }] : [];
      });
      return ok({ title: `${title}: ${changes.length === 1 ? "a row" : `${changes.length} rows`}`, changes });
    },
    // A fault names the row of the file as it would be: the rows of the sheet less those taken out, then those added.
    fieldOf: (fault, { lines, whole }) => {
      if (fault.file !== file || fault.row === null || fault.column === null) return null;
      const left = lines.filter(({ before, cells, out }) => !out && (before !== null || Object.values(cells).some((cell) => cell !== "")));
      const line = whole ? left[fault.row - 2] : undefined;
      return line && fault.column in line.cells ? cellField(line.at, fault.column) : null;
    },
  });

const differs = (before: RowTexts, cells: RowTexts): boolean =>
  Object.entries(cells).some(([heading, cell]) => (before[heading] ?? "") !== cell);
