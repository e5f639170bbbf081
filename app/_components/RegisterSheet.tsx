"use client";

import { useActionState, useEffect, useId, useRef, useState } from "react";
import type { RowTexts } from "#lib/editing/edit";
import type { ShownColumn } from "../_data/columnLabel";
import type { Action } from "../_gate/action";
import type { Edited } from "../_gate/editAction";
import { CellInput, CodeLists } from "./CellInput";
import { EditAnswer } from "./EditAnswer";
import styles from "./RegisterSheet.module.css";
import { fillBlock, moveInSheet, pastedBlock } from "./sheetKeys";
import { Wide } from "./Wide";

const BLANK = 3;

/**
 * Rows of a staging's file typed into as a table: arrows and Enter go from cell to cell, a block copied from a spreadsheet is pasted where one
 * stands, blank rows at the end add, a tick takes out; all of it is kept at once and taken back at once. Its action is a `registerAction`. It
 * works before scripts load, without the keys.
 *
 *     const columns = shownColumns(fileColumns(staging, "machines.csv"), staging.production.words);
 *     <RegisterSheet action={keepMachines} production={code} caption="Machines" columns={columns} rows={rowsOf(staging, "machines.csv")} whole />
 */
export const RegisterSheet = ({
  action,
  production,
  caption,
  columns,
  rows,
  whole,
  look = "press",
}: {
  readonly action: Action<Edited>;
  readonly production: string;
  readonly caption: string;
  readonly columns: readonly ShownColumn[];
  readonly rows: readonly RowTexts[];
  /** They are all rows of the file, in its order. */
  readonly whole: boolean;
  /** One black press a page. */
  readonly look?: "press" | "press second";
}) => {
  const [outcome, submit, waiting] = useActionState(action, null);
  const [blank, setBlank] = useState(BLANK);
  const [block, setBlock] = useState<{
    readonly cells: readonly (readonly string[])[];
    readonly row: number;
    readonly column: number;
  } | null>(null);
  const table = useRef<HTMLTableElement>(null);
  const id = useId();
  const kept = outcome?.ok ? outcome.value.kept : (outcome?.kept ?? {});
  const fields = outcome && !outcome.ok ? outcome.fields : {};
  const lines: readonly (RowTexts | null)[] = [...rows, ...Array.from({ length: blank }, () => null)];
  useEffect(() => {
    if (block && table.current) fillBlock(table.current, block);
    setBlock(null);
  }, [block]);
  const paste = (event: React.ClipboardEvent<HTMLTableElement>) => {
    const pasted = pastedBlock(event.nativeEvent);
    if (!pasted) return;
    event.preventDefault();
    setBlank((count) => Math.max(count, pasted.row + pasted.cells.length - rows.length + 1));
    setBlock(pasted);
  };
  const listId = (heading: string) => `${id}list-${heading}`;
  return (
    <form action={submit} className="no-print">
      <input type="hidden" name="production" value={production} />
      <input type="hidden" name="seen" value={JSON.stringify(rows)} />
      {whole && <input type="hidden" name="whole" value="yes" />}
      <Wide label={caption}>
        <table ref={table} className={styles.sheet} onKeyDown={(event) => moveInSheet(event.nativeEvent)} onPaste={paste}>
          <caption>{caption}. The blank rows at the end add; a block copied from a spreadsheet can be pasted.</caption>
          <thead>
            <tr>
              {columns.map(({ heading, label, unit, meaning }) => (
                <th key={heading} scope="col" title={meaning}>
                  {label}
                  {unit && <span className="units"> {unit}</span>}
                </th>
              ))}
              <th scope="col">Take out</th>
            </tr>
          </thead>
          <tbody>
            {lines.map((row, at) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a line of the sheet is its place.
              <tr key={at}>
                {columns.map((column, place) => {
                  const name = `r${at}.${column.heading}`;
                  return (
                    <td key={column.heading}>
                      <CellInput
                        column={column}
                        list={listId(column.heading)}
                        name={name}
                        data-row={at}
                        data-column={place}
                        defaultValue={kept[name] ?? row?.[column.heading] ?? ""}
                        placeholder=""
                        aria-label={`${column.label}, ${row ? (row.name ?? row.code ?? `row ${at + 1}`) : `new row ${at + 1 - rows.length}`}`}
                        aria-invalid={fields[name] !== undefined}
                        aria-describedby={fields[name] && `${id}${name}-wrong`}
                      />
                      {fields[name] && (
                        <span id={`${id}${name}-wrong`} className="bad cap">
                          {fields[name]}
                        </span>
                      )}
                    </td>
                  );
                })}
                <td>
                  {row && (
                    <label className={styles.out}>
                      <input type="checkbox" name={`out.${at}`} defaultChecked={kept[`out.${at}`] !== undefined} />
                      <span className="unseen">Take out {row.name ?? row.code ?? `row ${at + 1}`}</span>
                    </label>
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </Wide>
      <CodeLists columns={columns} id={listId} />
      <EditAnswer outcome={outcome} />
      <div className={`acts ${styles.acts}`}>
        <button type="submit" className={look} disabled={waiting}>
          {waiting ? "Keeping" : "Keep"}
        </button>
        <button type="submit" name="step" value="look" className="press second" disabled={waiting}>
          What follows
        </button>
      </div>
    </form>
  );
};
