"use client";

import { useActionState, useId } from "react";
import type { RowTexts } from "#lib/editing/edit";
import type { ShownColumn } from "../_data/columnLabel";
import type { Action } from "../_gate/action";
import type { Edited } from "../_gate/editAction";
import { CellInput, CodeLists } from "./CellInput";
import { EditAnswer } from "./EditAnswer";
import styles from "./RowForm.module.css";

/**
 * A form for one row of a staging's file, made out of the file's own columns: label, unit, what the cell means, and what is wrong with it beside
 * it. Its action is a `rowAction`. Without a row it adds one. It works before scripts load.
 *
 *     const columns = shownColumns(fileColumns(staging, "machines.csv"), staging.production.words);
 *     <RowForm action={keepMachine} production={code} columns={columns} row={rowOf(staging, "machines.csv", "ruffler")} canTakeOut />
 */
export const RowForm = ({
  action,
  production,
  columns,
  row,
  fixed = {},
  press = row ? "Keep" : "Add",
  canLook = true,
  canTakeOut = false,
}: {
  readonly action: Action<Edited>;
  readonly production: string;
  readonly columns: readonly ShownColumn[];
  /** As it is now; null for a new one. */
  readonly row: RowTexts | null;
  /** Cells that are sent and not shown. */
  readonly fixed?: RowTexts;
  readonly press?: string;
  /** Offers to say what would follow. */
  readonly canLook?: boolean;
  readonly canTakeOut?: boolean;
}) => {
  const [outcome, submit, waiting] = useActionState(action, null);
  const id = useId();
  const kept = outcome?.ok ? outcome.value.kept : (outcome?.kept ?? {});
  const listId = (heading: string) => `${id}list-${heading}`;
  return (
    <form action={submit} className="no-print">
      <input type="hidden" name="production" value={production} />
      <input type="hidden" name="row" value={JSON.stringify(row)} />
      {Object.entries(fixed).map(([heading, cell]) => (
        <input key={heading} type="hidden" name={`cell.${heading}`} value={cell} />
      ))}
      <div className={styles.fields}>
        {columns.map((column) => {
          const name = `cell.${column.heading}`;
          const wrong = outcome && !outcome.ok ? outcome.fields[name] : undefined;
          return (
            <div key={column.heading} className={`field ${styles.field}`}>
              <label htmlFor={id + name}>
                {column.label}
                {column.unit && <span className="units"> {column.unit}</span>}
              </label>
              <CellInput
                column={column}
                list={listId(column.heading)}
                id={id + name}
                name={name}
                defaultValue={kept[name] ?? row?.[column.heading] ?? ""}
                aria-invalid={wrong !== undefined}
                aria-describedby={`${id + name}-note${wrong ? ` ${id + name}-wrong` : ""}`}
              />
              <span id={`${id + name}-note`} className="cap">
                {column.meaning}
                {column.empty && `; left empty: ${column.empty}`}
              </span>
              {wrong && (
                <span id={`${id + name}-wrong`} className="bad">
                  {wrong}
                </span>
              )}
            </div>
          );
        })}
      </div>
      <CodeLists columns={columns} id={listId} />
      <EditAnswer outcome={outcome} />
      <div className={`acts ${styles.acts}`}>
        <button type="submit" className="press" disabled={waiting}>
          {waiting ? "Keeping" : press}
        </button>
        {canLook && (
          <button type="submit" name="step" value="look" className="press second" disabled={waiting}>
            What follows
          </button>
        )}
        {canTakeOut && row && (
          <button type="submit" name="press" value="out" className="press second" disabled={waiting}>
            Take out
          </button>
        )}
      </div>
    </form>
  );
};
