import type { CastingBoard } from "#lib/casting/castingGrid";
import styles from "./Casting.module.css";
import type { Typed } from "./CellEditor";
import { GridLine } from "./GridLine";
import type { Hand } from "./gridKeys";
import type { GridAsked } from "./gridLinks";
import { columnWords, type GridView } from "./gridView";

export interface GridFacts {
  readonly base: string;
  /** Garments worn in a place, by role and place. */
  readonly garments: Readonly<Record<string, number>>;
  readonly costumes: Readonly<Record<string, number>>;
  /** What is known of a performer, beside the name. */
  readonly about: Readonly<Record<string, string>>;
}

/** The hand on the grid: the cell in hand, where its block begins, what is typed so far, cells that are not kept yet. */
interface GridHand {
  readonly at: Hand;
  readonly from: Hand;
  readonly typing: string | null;
  readonly changed: ReadonlySet<string>;
  readonly onEnd: (typed: Typed) => void;
}

export interface GridProps {
  readonly board: CastingBoard;
  readonly view: GridView;
  readonly asked: GridAsked;
  readonly facts: GridFacts;
  /** Names are links to the page of their cell: where somebody may cast and no script has loaded. */
  readonly links?: boolean;
  /** Null: it is read, not edited. */
  readonly hand: GridHand | null;
}

/** Roles and places down, casts across: a table that is read, or the same as a grid that is edited. */
export const GridTable = (props: GridProps) => {
  const { rows, columns } = props.view;
  const grid = props.hand !== null;
  return (
    <table
      className={styles.grid}
      {...(grid && {
        role: "grid",
        "aria-multiselectable": true,
        "aria-rowcount": rows.length + 1,
        "aria-colcount": columns.length + 2,
        "aria-label": "Casting",
      })}
    >
      <thead>
        <tr {...(grid && { "aria-rowindex": 1 })}>
          <th scope="col">Role and place</th>
          {columns.map((column) => (
            <th key={JSON.stringify(column)} scope="col">
              {columnWords(column)}
            </th>
          ))}
          <th scope="col" className="num">
            Garments
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row, index) => (
          <GridLine key={`${row.role} ${row.place}`} {...props} row={row} index={index} />
        ))}
      </tbody>
    </table>
  );
};
