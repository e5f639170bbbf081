import type { Sheet } from "#lib/sheets/sheet";
import { columns } from "./columns";

/** A table below its title, to be read in a terminal. */
export const sheetLines = ({ title, headings, rows }: Sheet): readonly string[] =>
  rows.length === 0 ? ["", `${title}: none.`] : ["", `${title} (${rows.length})`, ...tableLines({ headings, rows })];

/** Its headings and rows. */
export const tableLines = ({ headings, rows }: Pick<Sheet, "headings" | "rows">): readonly string[] =>
  columns([headings.map(spoken), ...rows], "  ");

const spoken = (heading: string) => heading.replaceAll("_", " ");
