export type Leaf = string | number | boolean | null;

/** The single values of a construction, or of a part of it, by path: `operations.3.setupMinutes.1`. */
export const leavesOf = (value: unknown, path = ""): readonly (readonly [string, Leaf])[] =>
  typeof value === "object" && value !== null
    ? Object.entries(value).flatMap(([key, part]) => leavesOf(part, path === "" ? key : `${path}.${key}`))
    : [[path, value as Leaf]];
