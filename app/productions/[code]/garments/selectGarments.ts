import type { Minutes } from "#lib/units/quantities";
import { columnOf } from "./garmentColumns";
import { FACET_IDS, type FacetId, type GarmentQuery, type GroupId } from "./garmentQuery";
import type { GarmentRow, GarmentStateCode } from "./garmentRow";

const words = (row: GarmentRow): string =>
  [row.number, row.name, row.role, row.made, row.set, row.wearers, row.said].join(" ").toLowerCase();

const collator = new Intl.Collator("en-GB", { numeric: true });

const STATES: Readonly<Record<GarmentStateCode, string>> = {
  late: "Late",
  unplaced: "No place in the plan",
  ready: "In time",
  unlevelled: "Nothing planned",
};

/** Heading a garment stands under in a grouped list. */
export const groupOf = (row: GarmentRow, group: GroupId): string => (group === "state" ? STATES[row.state] : row[group] || "none");

const compare = (x: string | number, y: string | number): number =>
  typeof x === "number" && typeof y === "number" ? x - y : collator.compare(String(x), String(y));

/** The one definition of which garments a query shows, and in which order: the page, the files and a change of many use it. */
export const selectGarments = (rows: readonly GarmentRow[], query: GarmentQuery): readonly GarmentRow[] => {
  const wanted = query.find.toLowerCase().split(/\s+/).filter(Boolean);
  const { by } = columnOf(query.sort);
  const order = (a: GarmentRow, b: GarmentRow): number => {
    const grouped = query.group === "" ? 0 : compare(groupOf(a, query.group), groupOf(b, query.group));
    const sorted = compare(by(a), by(b));
    return grouped || (query.down ? -sorted : sorted) || collator.compare(a.number, b.number);
  };
  return rows
    .filter(
      (row) =>
        (!query.state || row.state === query.state) &&
        FACET_IDS.every((facet) => query.only[facet] === undefined || row[facet] === query.only[facet]) &&
        wanted.every((word) => words(row).includes(word)),
    )
    .toSorted(order);
};

/** Rows sent at once: more make the page slow to serve and to draw. */
const PAGE = 200;

export interface GarmentPage {
  readonly rows: readonly GarmentRow[];
  readonly page: number;
  readonly pages: number;
  /** Number of the first row shown, of all found. */
  readonly from: number;
}

/** The page asked for; the last one when there are fewer. */
export const pageOf = (found: readonly GarmentRow[], asked: number): GarmentPage => {
  const pages = Math.max(1, Math.ceil(found.length / PAGE));
  const page = Math.min(asked, pages);
  return { rows: found.slice((page - 1) * PAGE, page * PAGE), page, pages, from: (page - 1) * PAGE + 1 };
};

export interface Group {
  readonly name: string;
  readonly count: number;
  readonly minutes: Minutes;
}

/** Each heading of a grouped list with what stands under it on all pages; empty when nothing is grouped. */
export const groupsOf = (found: readonly GarmentRow[], group: GroupId | ""): readonly Group[] => {
  if (group === "") return [];
  const groups = new Map<string, { name: string; count: number; minutes: Minutes }>();
  for (const row of found) {
    const name = groupOf(row, group);
    const known = groups.get(name) ?? { name, count: 0, minutes: 0 };
    groups.set(name, { name, count: known.count + 1, minutes: known.minutes + row.minutes });
  }
  return [...groups.values()];
};

/** What each list may be kept to: the values there are, in order. */
export const facetsOf = (rows: readonly GarmentRow[]): Readonly<Record<FacetId, readonly string[]>> => {
  const values = (facet: FacetId) => [...new Set(rows.map((row) => row[facet]).filter(Boolean))].sort(collator.compare);
  return { role: values("role"), as: values("as"), set: values("set"), source: values("source"), wantedFor: values("wantedFor") };
};
