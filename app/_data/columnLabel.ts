import type { FileColumn } from "#lib/editing/fileColumns";
import { type Usage, words } from "#lib/words/words";
import { capital } from "./plural";

/** A column as a form and a sheet show it. */
export interface ShownColumn extends FileColumn {
  readonly label: string;
}

/** Headings that a file may be short about. */
const LABELS: Readonly<Record<string, string>> = {
  at: "Ready at",
  count: "How many",
  each: "One for each",
  pace_from: "Pace from a day on",
  prefix: "Letters before a number",
  productive: "Share for tasks",
  reserved_minutes_per_week: "Kept back a week",
  zone: "Time zone",
};

/** `cost_per_hour` is read "Cost per hour", and `colour` as the company spells it. */
export const columnLabel = (heading: string, usage: Usage): string =>
  LABELS[heading] ?? capital(heading.replaceAll("_", " ").replaceAll("colour", words(usage).trade.colour));

/** Columns with their labels: those of these headings, or all but some. */
export const shownColumns = (
  columns: readonly FileColumn[],
  usage: Usage,
  { only, without = [] }: { readonly only?: readonly string[]; readonly without?: readonly string[] } = {},
): readonly ShownColumn[] => {
  const wanted = only ? only.flatMap((heading) => columns.filter((column) => column.heading === heading)) : columns;
  return wanted
    .filter(({ heading }) => !without.includes(heading))
    .map((column) => ({ ...column, label: columnLabel(column.heading, usage) }));
};
