/** What one upload may hold; anything larger is refused with a fault before it is read. */
export const MOST_BYTES = 10_000_000;
export const MOST_ROWS = 20_000;
export const MOST_FILES = 200;
