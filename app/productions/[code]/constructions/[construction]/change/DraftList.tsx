import { type Leaf, leavesOf } from "#lib/constructions/leaves";
import { type RowList, writeRowAct } from "#lib/constructions/rowActs";
import { Wide } from "../../../../../_components/Wide";
import { DRAFT_COLUMNS, LIST_TITLES } from "./columns";
import styles from "./Draft.module.css";
import { DraftCell } from "./DraftCell";
import type { DraftState } from "./draftState";
import { Rates } from "./Rates";

/** One list of a construction as a table of fields, with a press to copy a row and one to take it out. */
export const DraftList = ({ list, state }: { readonly list: RowList; readonly state: DraftState }) => {
  const { construction, unread } = state.draft;
  const rows = construction[list];
  const columns = DRAFT_COLUMNS[list];
  if (rows.length === 0) return null;
  return (
    <section className="part" aria-labelledby={`list-${list}`}>
      <header>
        <h2 id={`list-${list}`}>{LIST_TITLES[list]}</h2>
        {list === "operations" && (
          <span className="small q">Learning in thousandths: 900 means that each doubling in a set takes 90% of the time.</span>
        )}
      </header>
      <Wide label={LIST_TITLES[list]}>
        <table className={styles.sheet}>
          <thead>
            <tr>
              {columns.map(({ path, heading }) => (
                <th key={path} scope="col">
                  {heading}
                </th>
              ))}
              <th scope="col">
                <span className="unseen">Row</span>
              </th>
            </tr>
          </thead>
          {rows.map((row, at) => {
            const leaves = new Map<string, Leaf>(leavesOf(row));
            const name = String(leaves.get("code") ?? leaves.get("role") ?? at + 1);
            return (
              <tbody key={`${name} ${state.acts.length}`}>
                <tr>
                  {columns.map((column) => (
                    <td key={column.path}>
                      {leaves.has(column.path) && (
                        <DraftCell
                          path={`${list}.${at}.${column.path}`}
                          leaf={leaves.get(column.path)!}
                          unread={unread}
                          label={`${column.heading}, ${name}`}
                          room={column.room}
                        />
                      )}
                    </td>
                  ))}
                  <td className="nb">
                    <button type="submit" name="press" value={writeRowAct({ act: "copy", list, at })} className="plain">
                      Copy<span className="unseen"> {name}</span>
                    </button>
                    <button type="submit" name="press" value={writeRowAct({ act: "drop", list, at })} className="plain">
                      Take out<span className="unseen"> {name}</span>
                    </button>
                  </td>
                </tr>
                {list === "operations" && <Rates state={state} at={at} columns={columns.length + 1} />}
              </tbody>
            );
          })}
        </table>
      </Wide>
    </section>
  );
};
