import { changedRow } from "#lib/editing/changedCells";
import type { Edit, RowConflict } from "#lib/editing/edit";
import { overTheirs } from "#lib/editing/inverse";
import type { Clash, ClashingRow } from "./outcome";

/** Conflicts laid side by side, and the edit as it would be kept over what the other has made. */
export const clashOf = ({ title, changes }: Edit, conflicts: readonly RowConflict[]): Clash => ({
  rows: conflicts.map(clashingRow),
  over: JSON.stringify({ title, changes: overTheirs(changes, conflicts) }),
});

const clashingRow = ({ mine, theirs }: RowConflict): ClashingRow => {
  const some = mine.after ?? mine.before ?? {};
  return {
    file: mine.file,
    name: changedRow(mine).name,
    gone: theirs === null,
    cells: Object.keys(some)
      .map((column) => ({ column, theirs: theirs ? (theirs[column] ?? "") : null, mine: mine.after ? (mine.after[column] ?? "") : null }))
      .filter((cell) => cell.theirs !== cell.mine),
  };
};
