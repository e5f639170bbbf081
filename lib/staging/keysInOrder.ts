/** The same value with the keys of every object in order: the database keeps objects without an order, files with one. */
export const keysInOrder = <Value>(value: Value): Value => {
  if (Array.isArray(value)) return value.map(keysInOrder) as Value;
  if (typeof value !== "object" || value === null) return value;
  const entries = Object.entries(value).map(([key, part]) => [key, keysInOrder(part)] as const);
  return Object.fromEntries(entries.toSorted(([a], [b]) => (a < b ? -1 : 1))) as Value;
};
