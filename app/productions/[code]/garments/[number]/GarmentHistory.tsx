import type { Garment } from "#lib/casting/wardrobe";
import type { RowChange } from "#lib/editing/edit";
import type { ListedEdit } from "#prisma/editing/listEdits";
import { showInstant } from "../../../../_data/showDates";
import styles from "./Garment.module.css";

/** Whether a change of a row is about this garment: its line of the piece list, its set, or work asked for on it. */
const isAbout = ({ file, before, after }: RowChange, garment: Garment): boolean => {
  const rows = [before, after].filter((row) => row !== null);
  if (file === "pieces.csv") return rows.some((row) => row.code === garment.piece);
  if (file === "other_work.csv") return rows.some((row) => row.garment === garment.number);
  return file === "sets.csv" && rows.some((row) => row.code === garment.set);
};

/** `source: build, becomes buy`; a row added or taken out by its name. */
const changeWords = ({ before, after }: RowChange): string => {
  if (!before || !after) return `${(after ?? before)?.title ?? (after ?? before)?.name ?? "a row"} ${after ? "added" : "taken out"}`;
  return Object.keys(after)
    .filter((cell) => after[cell] !== before[cell])
    .map((cell) => `${cell.replaceAll("_", " ")}: ${before[cell] || "empty"}, becomes ${after[cell] || "empty"}`)
    .join("; ");
};

const KINDS: Readonly<Record<ListedEdit["kind"], string>> = { do: "", undo: "put back: ", redo: "done again: " };

/** Who changed what about this garment, the newest first. */
export const GarmentHistory = ({
  edits,
  garment,
  zone,
}: {
  readonly edits: readonly ListedEdit[];
  readonly garment: Garment;
  readonly zone: string;
}) => {
  const own = edits
    .map((edit) => ({ ...edit, changes: edit.changes.filter((change) => isAbout(change, garment)) }))
    .filter(({ changes }) => changes.length > 0);
  return (
    <section className="part" aria-labelledby="history">
      <header>
        <h2 id="history">History</h2>
      </header>
      {own.length === 0 ? (
        <p className="q">Nothing of it has been changed since it was brought in.</p>
      ) : (
        <ul className="lines">
          {own.map((edit) => (
            <li key={edit.id}>
              {KINDS[edit.kind]}
              {edit.title}{" "}
              <span className="cap">
                {edit.who ?? "the command line"}, {showInstant(edit.at, zone)}
                {edit.takenBack && ", put back since"}
              </span>
              {edit.changes.map((change) => (
                <span key={JSON.stringify(change)} className={`q small ${styles.cells}`}>
                  {changeWords(change)}
                </span>
              ))}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
};
