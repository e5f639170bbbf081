/** Heights of the workroom picture: the tape, the first row, a row and its bar; and the room for names at the left. */
export const FRAME = { left: 196, tape: 52, top: 108, row: 46, bar: 34, barTop: 8, tier: 34 } as const;

/** Middle of a row. */
export const rowMiddle = (row: number): number => FRAME.top + FRAME.row * row + FRAME.barTop + FRAME.bar / 2;
