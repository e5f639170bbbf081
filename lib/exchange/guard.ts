/**
 * Spreadsheets run a cell that begins with = + - @ (or a tab) as a formula. On the way out such a cell gets an apostrophe in front,
 * which spreadsheets take for "this is text"; on the way in it is taken off again. Plain numbers are left alone.
 */
const RISKY = /^'*[=+\-@\t\r]/;
const GUARDED = /^'+[=+\-@\t\r]/;
const NUMBER = /^[+-]?\d+(?:[.,]\d+)?%?$/;

export const guard = (cell: string): string => (RISKY.test(cell) && !NUMBER.test(cell) ? `'${cell}` : cell);

export const unguard = (cell: string): string => (GUARDED.test(cell) ? cell.slice(1) : cell);
