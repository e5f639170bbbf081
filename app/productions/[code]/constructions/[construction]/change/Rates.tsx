import styles from "./Draft.module.css";
import { DraftCell } from "./DraftCell";
import type { DraftState } from "./draftState";

const POINTS = ["low", "likely", "high"] as const;

/** Beneath a task: its seconds for each unit of what is counted, and what it waits for. */
export const Rates = ({ state, at, columns }: { readonly state: DraftState; readonly at: number; readonly columns: number }) => {
  const { construction, unread } = state.draft;
  const { code, rates, waitsFor } = construction.operations[at]!;
  const base = `operations.${at}`;
  const field = (path: string, leaf: string | number, label: string, room: "figure" | "word") => (
    <DraftCell path={`${base}.${path}`} leaf={leaf} unread={unread} label={`${label}, ${code}`} room={room} />
  );
  return (
    <tr>
      <td colSpan={columns}>
        <div className={styles.rates}>
          {rates.map((rate, r) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a rate is named by its place.
            <span key={r}>
              {POINTS.map((point, p) => (
                <span key={point}>{field(`rates.${r}.seconds.${p}`, rate.seconds[p]!, `Seconds ${point}`, "figure")}</span>
              ))}
              s for each {field(`rates.${r}.driver`, rate.driver, "Counted by", "word")}
            </span>
          ))}
          {waitsFor.map((wait, w) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a wait is named by its place.
            <span key={w}>
              waits for {field(`waitsFor.${w}.on`, wait.on, "Waits for", "word")}
              and {field(`waitsFor.${w}.lagMinutes`, wait.lagMinutes, "Minutes after", "figure")} min
            </span>
          ))}
        </div>
      </td>
    </tr>
  );
};
