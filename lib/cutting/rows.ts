import type { Length } from "#lib/units/quantities";

/** A piece to cut off the roll; `breadth` null takes the whole width. */
export interface RollPiece {
  readonly length: Length;
  readonly breadth: Length | null;
}

/** One cut across the roll: as deep as its deepest piece. `pieces` are indices. */
export interface Row {
  readonly depth: Length;
  readonly pieces: readonly number[];
}

/** Widths of the roll that must be joined to cover so much: 120 in from 54 in goods takes 3. */
export const widthsFor = (cover: Length, cuttable: Length): number => Math.ceil(cover / cuttable);

/**
 * Lays pieces in rows across the roll, grain along it: deepest first, each into the first row with breadth left (first-fit decreasing
 * height). Strips take a row each; panels share one where the width allows. Pieces broader than the roll must have been split first.
 */
export const rowsAcross = (pieces: readonly RollPiece[], cuttable: Length, kerf: Length = 0): readonly Row[] => {
  const order = pieces.map((_, index) => index).sort((a, b) => pieces[b]!.length - pieces[a]!.length || a - b);
  const rows: { readonly depth: Length; readonly pieces: number[]; left: Length }[] = [];
  let open: typeof rows = [];
  for (const index of order) {
    const { length, breadth } = pieces[index]!;
    const across = breadth ?? cuttable;
    let row = open.find((candidate) => candidate.left >= across);
    if (!row) {
      row = { depth: length, pieces: [], left: cuttable };
      rows.push(row);
      open.push(row);
    }
    row.pieces.push(index);
    row.left -= across + kerf;
    if (row.left <= 0) open = open.filter((candidate) => candidate !== row);
  }
  return rows;
};
