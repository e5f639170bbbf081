import type { RowTexts } from "#lib/editing/edit";
import type { ShownColumn } from "../_data/columnLabel";
import styles from "./RegisterTable.module.css";
import { Wide } from "./Wide";

/** Rows of a staging's file to be read, for who may not change them and for paper. */
export const RegisterTable = ({
  caption,
  columns,
  rows,
  printed = false,
}: {
  readonly caption: string;
  readonly columns: readonly ShownColumn[];
  readonly rows: readonly RowTexts[];
  /** On paper only, where a sheet to type into stands on the screen. */
  readonly printed?: boolean;
}) => (
  <div className={printed ? styles.printed : undefined}>
    <Wide label={caption}>
      <table className="stack">
        <caption>{caption}</caption>
        <thead>
          <tr>
            {columns.map(({ heading, label }) => (
              <th key={heading} scope="col">
                {label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={JSON.stringify(row)}>
              {columns.map(({ heading, label, choices }) => (
                <td key={heading} data-label={label.toLowerCase()}>
                  {choices.find(({ value }) => value === row[heading])?.name ?? row[heading]}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </Wide>
  </div>
);
