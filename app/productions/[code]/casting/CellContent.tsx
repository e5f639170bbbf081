import { cellKey } from "#lib/casting/castCell";
import type { CastingBoard, GridColumn, GridRow } from "#lib/casting/castingGrid";
import { State } from "../../../_components/State";
import styles from "./Casting.module.css";
import { doublingNote, performerWords } from "./cellWords";
import { cellOf, emptyText, foldedText, type GridView } from "./gridView";

interface Props {
  readonly board: CastingBoard;
  readonly view: GridView;
  readonly row: GridRow;
  readonly column: GridColumn;
}

/** What a cell says: who, or nobody yet, and what is wrong with it. */
export const CellContent = ({ board, view, row, column }: Props) => {
  const cell = cellOf(row, column);
  if (!cell) return <Folded view={view} row={row} column={column} />;
  const held = view.cells.at(cell);
  const names = held.performers ?? [];
  const notes = view.doubled.get(cellKey(cell)) ?? [];
  return (
    <>
      {names.length === 0 ? (
        <span className={column.standing === "cover" ? `${styles.nobody} ${styles.none}` : styles.nobody}>{emptyText(held, column)}</span>
      ) : (
        names.map((code) => (
          <span key={code} className={column.standing === "cover" ? styles.cover : undefined}>
            {performerWords(board, [code])}
          </span>
        ))
      )}
      {notes.map((doubling) => (
        <span key={JSON.stringify(doubling)} className={styles.said}>
          {doubling.kind === "apart" ? (
            <span className="q">{doublingNote(board, doubling, cell)}</span>
          ) : (
            <State code={doubling.kind === "clash" ? "late" : "wait"}>{doublingNote(board, doubling, cell)}</State>
          )}
        </span>
      ))}
    </>
  );
};

const Folded = ({ view, row, column }: Omit<Props, "board">) => {
  const { of, filled } = view.cells.count(column, row);
  if (of === 0) return null;
  const text = foldedText(view, row, column);
  if (column.standing === "cover") return <span className={filled === 0 ? `${styles.nobody} ${styles.none}` : styles.cover}>{text}</span>;
  return (
    <span className={filled < of ? `${styles.fill} ${styles.short}` : styles.fill}>
      <svg width="44" height="12" aria-hidden="true">
        <rect x=".5" y=".5" width="43" height="11" />
        <rect x=".5" y=".5" width={(43 * filled) / of} height="11" />
      </svg>
      {text}
    </span>
  );
};
