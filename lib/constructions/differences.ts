import type { Construction } from "./construction";
import { type Leaf, leavesOf } from "./leaves";

/** One value in which two versions differ. */
export interface Difference {
  /** Place of it, rows by their codes: `operations.cut.setupMinutes.likely`. */
  readonly where: string;
  /** Null where the version does not have it. */
  readonly from: string | null;
  readonly to: string | null;
}

const POINTS = ["low", "likely", "high"];

/** Every value in which one version differs from another, in the order of the newer; rows are told apart by code, not by place. */
export const differencesOf = (before: Construction, after: Construction): readonly Difference[] => {
  const [was, is] = [placed(before), placed(after)];
  const wheres = [...new Set([...is.keys(), ...was.keys()])].filter((where) => where !== "version");
  return wheres.flatMap((where) => {
    const [from, to] = [said(was.get(where)), said(is.get(where))];
    return from === to ? [] : [{ where, from, to }];
  });
};

const placed = (construction: Construction): ReadonlyMap<string, Leaf> =>
  new Map(leavesOf(construction).map(([path, leaf]) => [named(construction, path), leaf]));

/** The path with codes for places, and words for the three points. */
const named = (construction: Construction, path: string): string => {
  let value: unknown = construction;
  return path
    .split(".")
    .map((key, at, keys) => {
      value = (value as Record<string, unknown>)[key];
      const point = keys[at - 1] === "setupMinutes" || keys[at - 1] === "seconds";
      return point ? POINTS[Number(key)] : (nameOf(value) ?? key);
    })
    .join(".");
};

const nameOf = (value: unknown): string | undefined => {
  if (typeof value !== "object" || value === null) return undefined;
  const row = value as Record<string, unknown>;
  const name = row.code ?? row.role ?? row.on ?? row.driver;
  return typeof name === "string" ? name : undefined;
};

const said = (leaf: Leaf | undefined): string | null => {
  if (leaf === undefined || leaf === null) return null;
  return typeof leaf === "boolean" ? (leaf ? "yes" : "no") : String(leaf);
};
