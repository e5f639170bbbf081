/** `1 garment`, `12 garments`. */
export const plural = (count: number, one: string, many = `${one}s`): string =>
  `${count.toLocaleString("en-GB")} ${count === 1 ? one : many}`;

/** First letter large, as a line of a table begins. */
export const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** `a`, `a and b`, `a, b and c`. */
export const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? (parts[0] ?? "") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
