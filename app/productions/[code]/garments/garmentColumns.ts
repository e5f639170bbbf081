import type { XlsxCell } from "#lib/exchange/writeXlsx";
import { GARMENT_STATES, type GarmentRow } from "./garmentRow";

/** A column of the list: what it is called, what it is sorted by, and what it becomes in a file. */
interface Column {
  readonly id: string;
  readonly label: string;
  /** A figure or a day: stands to the right. */
  readonly right?: boolean;
  /** Said before the figure where there is no head to stand under: on a phone. */
  readonly short?: string;
  readonly by: (row: GarmentRow) => string | number;
  readonly file: readonly { readonly heading: string; readonly cell: (row: GarmentRow) => XlsxCell }[];
}

/** Late first, by how much; then what has no place, what is ready. */
const standing = (row: GarmentRow): number => -row.minutesLate + GARMENT_STATES.indexOf(row.state);

/** Sorts after every day and every word. */
const LAST = "\uffff";

const day = (date: GarmentRow["due"]): XlsxCell => date && { day: date };

const column = <Id extends string>(one: Column & { readonly id: Id }): Column & { readonly id: Id } => one;

/** Every column there is, in the order they stand in. */
export const COLUMNS = [
  column({
    id: "number",
    label: "Number",
    by: (row) => row.number,
    file: [{ heading: "number", cell: (row) => row.number }],
  }),
  column({
    id: "name",
    label: "Garment",
    by: (row) => row.name,
    file: [
      { heading: "garment", cell: (row) => row.name },
      { heading: "set", cell: (row) => row.set },
    ],
  }),
  column({
    id: "role",
    label: "Role and wearers",
    by: (row) => row.role,
    file: [
      { heading: "role", cell: (row) => row.role },
      { heading: "wearers", cell: (row) => row.wearers },
    ],
  }),
  column({ id: "made", label: "Made as", by: (row) => row.made, file: [{ heading: "made_as", cell: (row) => row.made }] }),
  column({ id: "source", label: "Source", by: (row) => row.source, file: [{ heading: "source", cell: (row) => row.source }] }),
  column({ id: "shared", label: "One for", by: (row) => row.shared, file: [{ heading: "one_for", cell: (row) => row.shared }] }),
  column({
    id: "weight",
    label: "Priority",
    right: true,
    short: "priority",
    by: (row) => row.weight,
    file: [{ heading: "priority", cell: (row) => row.weight }],
  }),
  column({
    id: "minutes",
    label: "Work",
    right: true,
    short: "work",
    by: (row) => row.minutes,
    file: [{ heading: "work_minutes", cell: (row) => row.minutes }],
  }),
  column({
    id: "fittings",
    label: "Fittings",
    right: true,
    short: "fittings",
    by: (row) => row.fittings,
    file: [{ heading: "fittings", cell: (row) => row.fittings }],
  }),
  column({
    id: "ready",
    label: "Ready",
    right: true,
    short: "ready",
    by: (row) => row.ready ?? LAST,
    file: [{ heading: "ready", cell: (row) => day(row.ready) }],
  }),
  column({
    id: "due",
    label: "Wanted",
    right: true,
    short: "wanted",
    by: (row) => row.due ?? LAST,
    file: [{ heading: "wanted", cell: (row) => day(row.due) }],
  }),
  column({ id: "state", label: "State", by: standing, file: [{ heading: "state", cell: (row) => row.said }] }),
] as const;

export type ColumnId = (typeof COLUMNS)[number]["id"];

/** What a list shows until somebody chooses. */
export const USUAL_COLUMNS: readonly ColumnId[] = ["number", "name", "role", "made", "minutes", "ready", "due", "state"];

export const columnOf = (id: ColumnId): Column => COLUMNS.find((one) => one.id === id)!;
