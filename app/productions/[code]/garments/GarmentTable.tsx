"use client";

import { createColumnHelper, rowSortingFeature, tableFeatures, useTable } from "@tanstack/react-table";
import { useEffect, useMemo, useState } from "react";
import { showDay } from "#lib/calendar/showDay";
import { showHours } from "#lib/units/hours";
import { State, type StateCode } from "../../../_components/State";
import { Woven } from "../../../_components/Woven";
import { FindBar } from "./FindBar";
import { type GarmentQuery, type Sort, selectGarments, writeQuery, writeSort } from "./garmentQuery";
import type { GarmentRow, GarmentStateCode } from "./garmentRow";

const MARKS: Readonly<Record<GarmentStateCode, StateCode>> = { late: "late", unplaced: "wait", ready: "done", unlevelled: "none" };

const features = tableFeatures({ rowSortingFeature });
const column = createColumnHelper<typeof features, GarmentRow>();
const columns = column.columns([
  column.accessor("number", { header: "Number", cell: ({ row }) => <Woven number={row.original.number} href={row.original.href} /> }),
  column.accessor("name", {
    header: "Garment",
    cell: ({ row: { original } }) => (
      <>
        {original.name}
        {original.set && <span className="units"> {original.set}</span>}
      </>
    ),
  }),
  column.accessor("role", {
    header: "Role and wearers",
    cell: ({ row: { original } }) => (
      <>
        {original.role} <span className="units">{original.wearers}</span>
      </>
    ),
  }),
  column.accessor("made", { header: "Made as" }),
  column.accessor("minutes", { header: "Work", cell: ({ row }) => (row.original.minutes > 0 ? showHours(row.original.minutes) : "") }),
  column.accessor("ready", { header: "Ready", cell: ({ row }) => row.original.ready && showDay(row.original.ready) }),
  column.accessor("due", { header: "Wanted", cell: ({ row }) => row.original.due && showDay(row.original.due) }),
  column.accessor("state", {
    header: "State",
    cell: ({ row }) => <State code={MARKS[row.original.state]}>{row.original.said}</State>,
  }),
]);

const RIGHT = new Set(["minutes", "ready", "due"]);
/** Said before the figure where there is no head to stand under: on a phone. */
const LABELS: Readonly<Record<string, string>> = { minutes: "work", ready: "ready", due: "wanted" };
const FORM = "find";

/**
 * The list of garments. Search, state and order live in the address and go through one form, so without scripts each press loads the
 * page again; with them the list answers at once.
 */
export const GarmentTable = (given: { readonly rows: readonly GarmentRow[]; readonly query: GarmentQuery; readonly save: string }) => {
  const [query, setQuery] = useState(given.query);
  const data = useMemo(() => selectGarments(given.rows, query), [given.rows, query]);
  useEffect(() => window.history.replaceState(null, "", window.location.pathname + writeQuery(query)), [query]);
  const table = useTable({
    features,
    columns,
    data,
    getRowId: (row) => row.number,
    manualSorting: true,
    state: { sorting: [{ id: query.sort, desc: query.down }] },
  });
  const press = (sort: Sort) => ({ sort, down: query.sort === sort && !query.down });
  return (
    <>
      <FindBar
        id={FORM}
        query={query}
        onChange={setQuery}
        found={data.length}
        of={given.rows.length}
        save={given.save + writeQuery(query)}
      />
      <div className="wide">
        <table className="stack">
          <thead>
            {table.getHeaderGroups().map((group) => (
              <tr key={group.id}>
                {group.headers.map((header) => {
                  const next = press(header.column.id as Sort);
                  const sorted = header.column.getIsSorted();
                  return (
                    <th
                      key={header.id}
                      scope="col"
                      className={RIGHT.has(header.column.id) ? "num" : undefined}
                      aria-sort={sorted ? (sorted === "desc" ? "descending" : "ascending") : undefined}
                    >
                      <button
                        type="submit"
                        form={FORM}
                        name="sort"
                        value={writeSort(next.sort, next.down)}
                        onClick={(event) => {
                          event.preventDefault();
                          setQuery({ ...query, ...next });
                        }}
                      >
                        <table.FlexRender header={header} />
                        <span aria-hidden="true">{sorted ? (sorted === "desc" ? "↓" : "↑") : ""}</span>
                      </button>
                    </th>
                  );
                })}
              </tr>
            ))}
          </thead>
          <tbody>
            {table.getRowModel().rows.map((row) => (
              <tr key={row.id}>
                {row.getAllCells().map((cell) => (
                  <td
                    key={cell.id}
                    data-label={LABELS[cell.column.id]}
                    className={RIGHT.has(cell.column.id) ? "num" : cell.column.id === "name" ? "name b" : undefined}
                  >
                    <table.FlexRender cell={cell} />
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {data.length === 0 && <p className="part q">No garment answers to that. Clear the search to see all {given.rows.length}.</p>}
    </>
  );
};
