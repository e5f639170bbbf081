/** A cell of the grid by row and column, the row's own head being column 0. */
export interface Hand {
  readonly row: number;
  readonly column: number;
}

const PAGE = 10;

/** Where a key takes the hand on a grid of so many rows and columns; null when it is no key for going. It never goes round an edge. */
export const goneBy = (key: string, control: boolean, { row, column }: Hand, rows: number, columns: number): Hand | null => {
  const held = (at: Hand): Hand => ({
    row: Math.max(0, Math.min(rows - 1, at.row)),
    column: Math.max(0, Math.min(columns - 1, at.column)),
  });
  switch (key) {
    case "ArrowUp":
      return held({ row: control ? 0 : row - 1, column });
    case "ArrowDown":
      return held({ row: control ? rows : row + 1, column });
    case "ArrowLeft":
      return held({ row, column: control ? 0 : column - 1 });
    case "ArrowRight":
      return held({ row, column: control ? columns : column + 1 });
    case "Home":
      return held({ row: control ? 0 : row, column: 0 });
    case "End":
      return held({ row: control ? rows : row, column: columns });
    case "PageUp":
      return held({ row: row - PAGE, column });
    case "PageDown":
      return held({ row: row + PAGE, column });
    default:
      return null;
  }
};

/** Whether a cell lies in the block between two. */
export const isWithin = ({ row, column }: Hand, one: Hand, other: Hand): boolean =>
  Math.min(one.row, other.row) <= row &&
  row <= Math.max(one.row, other.row) &&
  Math.min(one.column, other.column) <= column &&
  column <= Math.max(one.column, other.column);
