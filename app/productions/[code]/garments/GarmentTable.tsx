"use client";

import { createColumnHelper, rowSelectionFeature, rowSortingFeature, tableFeatures, useTable } from "@tanstack/react-table";
import { useRouter } from "next/navigation";
import { Fragment, useEffect, useRef, useState, useTransition } from "react";
import { showHours } from "#lib/units/hours";
import { ChosenBar } from "./ChosenBar";
import { FindBar } from "./FindBar";
import styles from "./GarmentTable.module.css";
import { cellOf } from "./garmentCells";
import { COLUMNS, type ColumnId, columnOf } from "./garmentColumns";
import { type FacetId, type GarmentQuery, given, readQuery, writeQuery, writeSort } from "./garmentQuery";
import type { GarmentRow } from "./garmentRow";
import { type Group, groupOf } from "./selectGarments";

const features = tableFeatures({ rowSortingFeature, rowSelectionFeature });
const column = createColumnHelper<typeof features, GarmentRow>();
const columns = column.columns(
  COLUMNS.map(({ id, label, by }) => column.accessor(by, { id, header: label, cell: ({ row }) => cellOf(id, row.original) })),
);

const FORM = "find";
/** Long enough to type the next letter. */
const PAUSE = 180;

interface Given {
  readonly rows: readonly GarmentRow[];
  readonly groups: readonly Group[];
  readonly query: GarmentQuery;
  readonly facets: Readonly<Record<FacetId, readonly string[]>>;
  /** All that the query finds. */
  readonly found: number;
  readonly of: number;
  /** Address of the production. */
  readonly base: string;
  readonly canChange: boolean;
  /** How many are found, and files of the list. */
  readonly files: React.ReactNode;
}

/**
 * The list of garments. Search, order and columns live in the address and are answered by the server; without scripts each press loads
 * the page again. Rows are chosen with the space bar or the mouse, with Shift a run of them; the arrows go from row to row.
 */
export const GarmentTable = ({ rows, groups, query, facets, found, of, base, canChange, files }: Given) => {
  const router = useRouter();
  const [busy, begin] = useTransition();
  const [chosen, setChosen] = useState<Record<string, true>>({});
  const waiting = useRef<ReturnType<typeof setTimeout>>(undefined);
  const table = useTable({
    features,
    columns,
    data: rows as GarmentRow[],
    getRowId: (row) => row.number,
    manualSorting: true,
    state: { sorting: [{ id: query.sort, desc: query.down }], rowSelection: chosen },
    onRowSelectionChange: setChosen,
  });
  const ask = (form: HTMLFormElement, submitter?: HTMLElement | null) => {
    clearTimeout(waiting.current);
    const go = () => {
      const asked = writeQuery(readQuery(given(new FormData(form, submitter).entries())));
      begin(() => router.replace(`${base}/garments${asked}`, { scroll: false }));
    };
    if (submitter) go();
    else waiting.current = setTimeout(go, PAUSE);
  };
  // What was typed before scripts came is asked for now.
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when scripts have come.
  useEffect(() => {
    const form = document.getElementById(FORM);
    if (!(form instanceof HTMLFormElement)) return;
    const typed = writeQuery(readQuery(given(new FormData(form).entries())));
    if (typed !== writeQuery({ ...query, page: 1 })) ask(form);
  }, []);
  const headings = new Map(groups.map((group) => [group.name, group]));
  const isShown = (id: string) => query.show.some((each) => each === id);
  const wide = query.show.length + 1;
  const shown = table.getRowModel().rows;
  return (
    <>
      <FindBar id={FORM} query={query} facets={facets} ask={ask}>
        {files}
      </FindBar>
      <div className="wide">
        <table className={`stack ${styles.list}`} aria-busy={busy} onKeyDown={byArrows}>
          <thead>
            <tr>
              <th scope="col" className={styles.pick}>
                <span className="unseen">Chosen</span>
                <input
                  type="checkbox"
                  aria-label="Choose every row shown"
                  checked={table.getIsAllRowsSelected()}
                  onChange={table.getToggleAllRowsSelectedHandler()}
                />
              </th>
              {query.show.map((id) => (
                <Head key={id} id={id} query={query} />
              ))}
            </tr>
          </thead>
          <tbody>
            {shown.map((row, at) => {
              const name = query.group === "" ? null : groupOf(row.original, query.group);
              const before = shown[at - 1]?.original;
              const begins = query.group !== "" && (!before || groupOf(before, query.group) !== name);
              const group = name === null ? undefined : headings.get(name);
              return (
                <Fragment key={row.id}>
                  {begins && group && (
                    <tr className={styles.group}>
                      <th scope="rowgroup" colSpan={wide}>
                        {group.name} <span className="units">{`${group.count}, ${showHours(group.minutes)}`}</span>
                      </th>
                    </tr>
                  )}
                  <tr className={row.getIsSelected() ? "in-hand" : undefined}>
                    <td className={styles.pick}>
                      <input
                        type="checkbox"
                        form="chosen"
                        name="number"
                        value={row.id}
                        aria-label={`Choose ${row.id}, ${row.original.name}`}
                        checked={row.getIsSelected()}
                        onChange={row.getToggleSelectedHandler()}
                      />
                    </td>
                    {row
                      .getAllCells()
                      .filter((cell) => isShown(cell.column.id))
                      .map((cell) => (
                        <Cell key={cell.id} id={cell.column.id as ColumnId}>
                          <table.FlexRender cell={cell} />
                        </Cell>
                      ))}
                  </tr>
                </Fragment>
              );
            })}
          </tbody>
        </table>
      </div>
      {rows.length === 0 && <p className="part q">No garment answers to that. Clear the search to see all {of}.</p>}
      <ChosenBar
        base={base}
        canChange={canChange}
        query={query}
        found={found}
        chosen={Object.keys(chosen)}
        shown={shown.map((row) => row.id)}
        none={() => setChosen({})}
      />
    </>
  );
};

const Head = ({ id, query }: { readonly id: ColumnId; readonly query: GarmentQuery }) => {
  const { label, right } = columnOf(id);
  const sorted = query.sort === id;
  return (
    <th scope="col" className={right ? "num" : undefined} aria-sort={sorted ? (query.down ? "descending" : "ascending") : undefined}>
      <button type="submit" form={FORM} name="sort" value={writeSort(id, sorted && !query.down)}>
        {label}
        <span aria-hidden="true">{sorted ? (query.down ? "↓" : "↑") : ""}</span>
      </button>
    </th>
  );
};

const Cell = ({ id, children }: { readonly id: ColumnId; readonly children: React.ReactNode }) => {
  const { right, short } = columnOf(id);
  return (
    <td data-label={short} className={right ? "num" : id === "name" ? "name b" : undefined}>
      {children}
    </td>
  );
};

/** Up and down go from one row's box to the next. */
const byArrows = (event: React.KeyboardEvent<HTMLTableElement>) => {
  const step = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
  if (step === 0 || !(event.target instanceof HTMLInputElement)) return;
  const boxes = [...event.currentTarget.querySelectorAll<HTMLInputElement>('input[type="checkbox"]')];
  const next = boxes[boxes.indexOf(event.target) + step];
  if (!next) return;
  event.preventDefault();
  next.focus();
};
