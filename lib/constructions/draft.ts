import type { Fault } from "#lib/exchange/fault";
import type { Construction } from "./construction";
import type { Leaf } from "./leaves";
import { readConstruction } from "./readConstruction";

/** A construction somebody is changing. It has the shape of one, and may be wrong in any other way. */
export interface Draft {
  readonly construction: Construction;
  /** Texts that could not be read as what their place wants, by path: kept so that they need not be typed again. */
  readonly unread: Readonly<Record<string, string>>;
  /** Everything wrong with it; it may be kept when there is nothing. */
  readonly faults: readonly Fault[];
}

/** The construction with texts put in place of its values, by path, and judged. A path it does not have is passed over. */
export const withTexts = (construction: Construction, texts: ReadonlyMap<string, string>): Draft => {
  const unread: Record<string, string> = {};
  const changed = replaced(construction, "", (path, leaf) => {
    const text = texts.get(path)?.trim();
    if (text === undefined) return leaf;
    const read = readLeaf(text, leaf);
    if (read === undefined) unread[path] = text;
    return read ?? (read === null ? null : leaf);
  }) as Construction;
  const ofTexts = Object.entries(unread).map(
    ([path, text]): Fault => ({
      file: changed.code,
      row: null,
      column: path,
      problem: `"${text}" is not a number.`,
      mend: "Write it in figures, for example 12 or 0.5.",
    }),
  );
  return { construction: changed, unread, faults: [...ofTexts, ...judged(changed)] };
};

export const drafted = (construction: Construction): Draft => ({ construction, unread: {}, faults: judged(construction) });

const judged = (construction: Construction): readonly Fault[] => {
  const read = readConstruction(JSON.stringify(construction), construction.code);
  return read.ok ? [] : read.error;
};

const replaced = (value: unknown, path: string, leaf: (path: string, value: Leaf) => Leaf): unknown => {
  if (typeof value !== "object" || value === null) return leaf(path, value as Leaf);
  const parts = Object.entries(value).map(([key, part]) => [key, replaced(part, path === "" ? key : `${path}.${key}`, leaf)] as const);
  return Array.isArray(value) ? parts.map(([, part]) => part) : Object.fromEntries(parts);
};

/** Undefined when the text is not what the place wants; an empty text leaves out what may be left out. */
const readLeaf = (text: string, leaf: Leaf): Leaf | undefined => {
  if (typeof leaf === "boolean") return text === "yes";
  if (typeof leaf === "number") return text !== "" && Number.isFinite(Number(text)) ? Number(text) : undefined;
  return leaf === null && text === "" ? null : text;
};
