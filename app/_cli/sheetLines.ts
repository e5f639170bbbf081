import type { Sheet } from "#lib/sheets/sheet";
import { columns } from "./columns";

/** A table below its title, to be read in a terminal: at most so many rows of it, and where the rest is. */
export const sheetLines = ({ title, headings, rows }: Sheet, most = Number.POSITIVE_INFINITY, rest = ""): readonly string[] => {
  if (rows.length === 0) return ["", `${title}: none.`];
  const shown = tableLines({ headings, rows: rows.slice(0, most) });
  return ["", `${title} (${rows.length})`, ...shown, ...(rows.length > most ? [`  and ${rows.length - most} more${rest}`] : [])];
};

/** Its headings and rows. */
export const tableLines = ({ headings, rows }: Pick<Sheet, "headings" | "rows">): readonly string[] =>
  columns([headings.map((heading) => heading.replaceAll("_", " ")), ...rows], "  ");
