import { cellKey } from "#lib/casting/castCell";
import type { GridColumn, GridRow } from "#lib/casting/castingGrid";
import { plural } from "../../../_data/plural";
import styles from "./Casting.module.css";
import { CellContent } from "./CellContent";
import { CellEditor } from "./CellEditor";
import { placeWords } from "./cellWords";
import type { GridProps } from "./GridTable";
import { isWithin } from "./gridKeys";
import { cellHref, foldHref } from "./gridLinks";
import { cellOf, columnWords } from "./gridView";

type Props = GridProps & { readonly row: GridRow; readonly index: number };

/** One role or place: its name, a cell for each cast, and how many garments it wears. */
export const GridLine = (props: Props) => {
  const { view, asked, facts, hand, row, index } = props;
  const name = nameOfRow(props);
  const places = row.place === null ? Array.from({ length: row.places }, (_, at) => at + 1) : [row.place];
  const garments = places.reduce((sum, place) => sum + (facts.garments[`${row.role} ${place}`] ?? 0), 0);
  return (
    <tr {...(hand && { "aria-rowindex": index + 2 })}>
      <th scope="row" {...(hand && { role: "rowheader" })} {...placed(hand, index, 0)}>
        {name} {(row.place ?? 1) === 1 && <span className="units">{plural(facts.costumes[row.role] ?? 0, "costume")}</span>}{" "}
        {row.place === null && (
          <a className={`${styles.fold} no-print`} href={foldHref(facts.base, asked, row.role)} tabIndex={hand ? -1 : undefined}>
            place by place
          </a>
        )}
      </th>
      {view.columns.map((column, across) => (
        <Cell key={JSON.stringify(column)} {...props} name={name} column={column} across={across + 1} />
      ))}
      <td className={styles.count} {...(hand && { role: "gridcell" })} {...placed(hand, index, view.columns.length + 1)}>
        {garments}
      </td>
    </tr>
  );
};

const nameOfRow = ({ board, row: { role, place, places } }: Props): string =>
  place === null ? `${board.roles.find(({ code }) => code === role)?.name ?? role}, 1 to ${places}` : placeWords(board, { role, place });

/** The place of a cell on the grid: one of them takes the tab key, all take the arrows. */
const placed = (hand: GridProps["hand"], row: number, column: number) =>
  hand && {
    "data-at": `${row},${column}`,
    tabIndex: hand.at.row === row && hand.at.column === column ? 0 : -1,
    "aria-colindex": column + 1,
    "aria-selected": isWithin({ row, column }, hand.at, hand.from),
  };

const Cell = ({
  board,
  view,
  asked,
  facts,
  links,
  hand,
  row,
  index,
  name,
  column,
  across,
}: Props & { readonly name: string; readonly column: GridColumn; readonly across: number }) => {
  const cell = cellOf(row, column);
  const key = cell && cellKey(cell);
  const clashes = key !== null && view.doubled.get(key)?.some(({ kind }) => kind === "clash");
  const marks = [
    clashes && styles.clash,
    key !== null && hand?.changed.has(key) && styles.changed,
    hand && isWithin({ row: index, column: across }, hand.at, hand.from) && styles.held,
  ].filter(Boolean);
  const content = <CellContent board={board} view={view} row={row} column={column} />;
  const inHand = hand?.at.row === index && hand.at.column === across && cell;
  return (
    <td className={marks.join(" ") || undefined} {...(hand && { role: "gridcell" })} {...placed(hand, index, across)}>
      {inHand && hand.typing !== null ? (
        <CellEditor
          board={board}
          column={column}
          label={`${name}, ${columnWords(column)}`}
          first={hand.typing}
          about={facts.about}
          onEnd={hand.onEnd}
        />
      ) : links ? (
        <a href={cell ? cellHref(facts.base, cell) : foldHref(facts.base, asked, row.role)}>
          {content}
          <span className="unseen">
            {cell && view.cells.at(cell).performers === null && "not danced: "}
            {name}, {columnWords(column)}
          </span>
        </a>
      ) : (
        content
      )}
    </td>
  );
};
