import { type CastCell, cellKey } from "#lib/casting/castCell";
import type { CastingBoard, GridCell, GridColumn, GridRow } from "#lib/casting/castingGrid";
import { CastCells, gridColumns, gridRows } from "#lib/casting/castingGrid";
import { type Doubling, doublings } from "#lib/casting/doublings";
import { typedNames } from "./cellWords";
import type { GridAsked } from "./gridLinks";

/** The casting laid out as rows and columns, with what is wrong in its cells. */
export interface GridView {
  readonly columns: readonly GridColumn[];
  readonly rows: readonly GridRow[];
  readonly cells: CastCells;
  readonly doubled: ReadonlyMap<string, readonly Doubling[]>;
}

export const gridView = (board: CastingBoard, { open, further, covers }: GridAsked): GridView => {
  const doubled = new Map<string, Doubling[]>();
  for (const doubling of doublings(board))
    for (const place of doubling.places) {
      const key = cellKey({ ...place, cast: doubling.cast });
      doubled.set(key, [...(doubled.get(key) ?? []), doubling]);
    }
  return {
    columns: gridColumns(board, [further], covers),
    rows: gridRows(board.roles, (role) => open.includes("all") || open.includes(role)),
    cells: new CastCells(board),
    doubled,
  };
};

/** The cell of a row and column; null on a folded row. */
export const cellOf = (row: GridRow, column: GridColumn): CastCell | null =>
  row.place === null ? null : { role: row.role, place: row.place, ...column };

/** What a cell says, in one line: as it is copied. */
export const cellText = (board: CastingBoard, view: GridView, row: GridRow, column: GridColumn): string => {
  const cell = cellOf(row, column);
  if (!cell) return foldedText(view, row, column);
  return typedNames(board, view.cells.at(cell).performers ?? []);
};

export const foldedText = ({ cells }: GridView, row: GridRow, column: GridColumn): string => {
  const { of, filled } = cells.count(column, row);
  if (of === 0) return "";
  if (column.standing === "cover") return filled === 0 ? "nobody" : `${filled} of ${of} covered`;
  return `${filled} of ${of} placed`;
};

/** What stands in a cell that holds nobody. */
export const emptyText = ({ performers, sizeGroup }: GridCell, { standing }: GridColumn): string => {
  if (performers === null) return "";
  return standing === "cover" ? "nobody" : `not cast, ${sizeGroup}`;
};

/** `First cast`, `Stands by, first`. */
export const columnWords = ({ cast, standing }: GridColumn): string => {
  const name = cast.slice(0, 1).toUpperCase() + cast.slice(1);
  return standing === "cover" ? `${name}: stands by` : `${name} cast`;
};
