import { Heads } from "../../../_components/Heads";
import { PutBack } from "../../../_components/PutBack";
import { State } from "../../../_components/State";
import { plural } from "../../../_data/plural";
import styles from "./History.module.css";
import type { ShownEntry } from "./historyEntries";

/** The first cell that changed, and how many more rows there are. */
const summaryOf = (rows: ShownEntry["rows"]): string => {
  const [first] = rows;
  const cell = first?.cells[0];
  const said =
    first?.kind === "changed" && cell
      ? `${first.name}: ${cell.label.toLowerCase()} ${cell.before || "empty"} → ${cell.after || "empty"}`
      : `${first?.name}, ${first?.kind}`;
  const more = [
    ...(first?.kind === "changed" && first.cells.length > 1 ? [plural(first.cells.length - 1, "more cell")] : []),
    ...(rows.length > 1 ? [plural(rows.length - 1, "more row")] : []),
  ];
  return [said, ...more].join(", ");
};

/** One thing that was done, what it changed cell by cell, and the press that takes it back. */
export const HistoryEntry = ({
  entry: { time, who, what, rows, edit, takenBack },
  production,
}: {
  readonly entry: ShownEntry;
  readonly production: string;
}) => (
  <li className={styles.entry}>
    <span className="q">{time}</span>
    <div>
      <p>
        {what} <span className="units">{who}</span> <span aria-live="polite">{takenBack && <State code="cut">{takenBack}</State>}</span>
      </p>
      {rows.length > 0 && (
        <details className="small">
          <summary>{summaryOf(rows)}</summary>
          <table className="stack">
            <Heads of={["Row", "Column", "Before", "After"]} />
            <tbody>
              {rows.flatMap(({ file, name, kind, cells }, at) =>
                (cells.length > 0 ? cells : [{ label: "", before: "", after: "" }]).map((cell, place) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: the rows of an edit never change.
                  <tr key={`${at} ${place}`}>
                    <td className="name">
                      {place === 0 && (
                        <>
                          <b>{name}</b>{" "}
                          <span className="units">
                            {kind === "changed"
                              ? file.replace(".csv", "").replaceAll("_", " ")
                              : `${file.replace(".csv", "").replaceAll("_", " ")}, ${kind}`}
                          </span>
                        </>
                      )}
                    </td>
                    <td>{cell.label}</td>
                    <td data-label="before">{cell.before || (kind === "changed" && cell.label ? "empty" : "")}</td>
                    <td data-label="after" className="b">
                      {cell.after || (kind === "changed" && cell.label ? "empty" : "")}
                    </td>
                  </tr>
                )),
              )}
            </tbody>
          </table>
        </details>
      )}
    </div>
    {edit && <PutBack production={production} edit={edit.id} press={edit.press} />}
  </li>
);
