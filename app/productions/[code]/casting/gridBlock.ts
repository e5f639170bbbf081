import type { CastCell, Recast } from "#lib/casting/castCell";
import type { CastingBoard } from "#lib/casting/castingGrid";
import type { Hand } from "./gridKeys";
import { cellOf, cellText, type GridView } from "./gridView";

const between = (one: number, a: number, b: number): boolean => Math.min(a, b) <= one && one <= Math.max(a, b);

/** Rows and columns of the block between two cells; the row's own head and the count of garments are no part of it. */
const blockOf = ({ rows, columns }: GridView, one: Hand, other: Hand) => ({
  rows: rows.filter((_, at) => between(at, one.row, other.row)),
  columns: columns.filter((_, at) => between(at + 1, one.column, other.column)),
});

/** The block as a spreadsheet takes it: lines of cells parted by tabs. */
export const copiedBlock = (board: CastingBoard, view: GridView, one: Hand, other: Hand): string => {
  const { rows, columns } = blockOf(view, one, other);
  return rows.map((row) => columns.map((column) => cellText(board, view, row, column)).join("\t")).join("\n");
};

/** The block cleared: nobody is cast or stands by; where nobody is cast already, the cast no longer has the place. */
export const clearedBlock = (view: GridView, one: Hand, other: Hand): readonly Recast[] => {
  const { rows, columns } = blockOf(view, one, other);
  const cells = rows.flatMap((row) =>
    columns.flatMap((column): readonly CastCell[] => {
      const cell = cellOf(row, column);
      return cell ? [cell] : [];
    }),
  );
  return cells.flatMap((cell): readonly Recast[] => {
    const { performers } = view.cells.at(cell);
    if (performers === null || (performers.length === 0 && cell.standing === "cover")) return [];
    return [{ ...cell, performers: performers.length === 0 ? null : [] }];
  });
};
