import { GARMENT_STATES, type GarmentRow, type GarmentStateCode } from "./garmentRow";

export const SORTS = ["number", "name", "role", "made", "minutes", "ready", "due", "state"] as const;
export type Sort = (typeof SORTS)[number];

/** What a reader asked of the list: kept in the address, so that a link, a reload and the file saved all show the same. */
export interface GarmentQuery {
  readonly find: string;
  readonly state: GarmentStateCode | "";
  readonly sort: Sort;
  readonly down: boolean;
}

type Given = string | readonly string[] | undefined;

const last = (given: Given): string => (typeof given === "string" ? given : (given?.at(-1) ?? ""));

/** Reads the address; what cannot be read is as if it were not there. */
export const readQuery = (given: Readonly<Record<string, Given>>): GarmentQuery => {
  const sort = last(given.sort);
  const state = last(given.state);
  return {
    find: last(given.find).slice(0, 100),
    state: GARMENT_STATES.find((each) => each === state) ?? "",
    sort: SORTS.find((each) => each === sort.replace(/^-/, "")) ?? "number",
    down: sort.startsWith("-"),
  };
};

export const writeSort = (sort: Sort, down: boolean): string => (down ? `-${sort}` : sort);

/** The address's query for a list; empty for the list as it first stands. */
export const writeQuery = ({ find, state, sort, down }: GarmentQuery): string => {
  const query = new URLSearchParams();
  if (find) query.set("find", find);
  if (state) query.set("state", state);
  if (sort !== "number" || down) query.set("sort", writeSort(sort, down));
  const text = query.toString();
  return text && `?${text}`;
};

/** Late first, by how much; then what has no place, what is ready. */
const standing = (row: GarmentRow): number => -row.minutesLate + GARMENT_STATES.indexOf(row.state);

const valueFor = (row: GarmentRow, sort: Sort): string | number =>
  sort === "state" ? standing(row) : sort === "minutes" ? row.minutes : (row[sort] ?? "\uffff");

const words = (row: GarmentRow): string =>
  [row.number, row.name, row.role, row.made, row.set, row.wearers, row.said].join(" ").toLowerCase();

const collator = new Intl.Collator("en-GB", { numeric: true });

/** The one definition of which garments a query shows, and in which order: the page, the island and the file use it. */
export const selectGarments = (rows: readonly GarmentRow[], { find, state, sort, down }: GarmentQuery): GarmentRow[] => {
  const wanted = find.toLowerCase().split(/\s+/).filter(Boolean);
  const order = (a: GarmentRow, b: GarmentRow): number => {
    const [x, y] = [valueFor(a, sort), valueFor(b, sort)];
    const by = typeof x === "number" && typeof y === "number" ? x - y : collator.compare(String(x), String(y));
    return (down ? -by : by) || collator.compare(a.number, b.number);
  };
  return rows.filter((row) => (!state || row.state === state) && wanted.every((word) => words(row).includes(word))).toSorted(order);
};
