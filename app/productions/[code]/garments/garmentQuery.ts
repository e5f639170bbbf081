import { COLUMNS, type ColumnId, USUAL_COLUMNS } from "./garmentColumns";
import { GARMENT_STATES, type GarmentStateCode } from "./garmentRow";

/** What a list may be kept to, one value each, and grouped by; the labels stand in `FACETS`. */
export const FACET_IDS = ["role", "as", "set", "source", "wantedFor"] as const;
export type FacetId = (typeof FACET_IDS)[number];
export const FACETS: Readonly<Record<FacetId, string>> = {
  role: "Role",
  as: "Made as",
  set: "Set",
  source: "Source",
  wantedFor: "Wanted for",
};

export type GroupId = FacetId | "state";
const GROUPS = [...FACET_IDS, "state"] as const;

/** What a reader asked of the list: kept in the address, so that a link, a reload and the file saved all show the same. */
export interface GarmentQuery {
  readonly find: string;
  readonly state: GarmentStateCode | "";
  readonly only: Readonly<Partial<Record<FacetId, string>>>;
  readonly group: GroupId | "";
  readonly sort: ColumnId;
  readonly down: boolean;
  /** In the order of the columns. */
  readonly show: readonly ColumnId[];
  /** From 1. */
  readonly page: number;
}

type Given = string | readonly string[] | undefined;

const all = (given: Given): readonly string[] => (given === undefined ? [] : typeof given === "string" ? [given] : given);
const last = (given: Given): string => all(given).at(-1) ?? "";

/** Reads the address; what cannot be read is as if it were not there. */
export const readQuery = (given: Readonly<Record<string, Given>>): GarmentQuery => {
  const sort = last(given.sort);
  const state = last(given.state);
  const group = last(given.group);
  const shown = new Set(all(given.show).flatMap((one) => one.split(",")));
  const show = COLUMNS.filter(({ id }) => shown.has(id)).map(({ id }) => id);
  const only = FACET_IDS.flatMap((facet) => {
    const value = last(given[facet]).slice(0, 100);
    return value ? [[facet, value] as const] : [];
  });
  return {
    find: last(given.find).slice(0, 100),
    state: GARMENT_STATES.find((each) => each === state) ?? "",
    only: Object.fromEntries(only),
    group: GROUPS.find((each) => each === group) ?? "",
    sort: COLUMNS.find(({ id }) => id === sort.replace(/^-/, ""))?.id ?? "number",
    down: sort.startsWith("-"),
    show: show.length > 0 ? show : USUAL_COLUMNS,
    page: /^[1-9]\d{0,5}$/.test(last(given.page)) ? Number(last(given.page)) : 1,
  };
};

/** What a form or an address says, as `readQuery` wants it. */
export const given = (pairs: Iterable<readonly [string, FormDataEntryValue]>): Record<string, string[]> => {
  const found: Record<string, string[]> = Object.create(null);
  for (const [name, value] of pairs) if (typeof value === "string") found[name] = [...(found[name] ?? []), value];
  return found;
};

export const writeSort = (sort: ColumnId, down: boolean): string => (down ? `-${sort}` : sort);

/** The address's query for a list, with its question mark; empty for the list as it first stands. */
export const writeQuery = ({ find, state, only, group, sort, down, show, page }: GarmentQuery): string => {
  const query = new URLSearchParams();
  if (find) query.set("find", find);
  if (state) query.set("state", state);
  for (const facet of FACET_IDS) if (only[facet]) query.set(facet, only[facet]);
  if (group) query.set("group", group);
  if (sort !== "number" || down) query.set("sort", writeSort(sort, down));
  if (show.join() !== USUAL_COLUMNS.join()) query.set("show", show.join());
  if (page > 1) query.set("page", String(page));
  const text = query.toString();
  return text && `?${text}`;
};
