import { type CastCell, cellKey, type Recast } from "#lib/casting/castCell";
import { CastCells, type CastingBoard } from "#lib/casting/castingGrid";

/** Cells as they stand now, once each: what a person has before them. */
export const seenCells = (board: CastingBoard, changes: readonly CastCell[]): readonly Recast[] => {
  const cells = new CastCells(board);
  const once = new Map(
    changes.map(({ cast, role, place, standing }) => [cellKey({ cast, role, place, standing }), { cast, role, place, standing }]),
  );
  return [...once.values()].map((cell) => ({ ...cell, performers: cells.at(cell).performers }));
};

/** A place the cast does not have, as the form of a cell says it. */
export const NO_PLACE = "-";
