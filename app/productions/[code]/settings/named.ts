import { words } from "#lib/words/words";
import type { ShownColumn } from "../../../_data/columnLabel";

const usage = (code: "uk" | "us"): string => {
  const { toile, cover, hire } = words(code).trade;
  return `${code.toUpperCase()}: ${toile}, ${cover}, ${hire}`;
};

const NAMES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  words: { uk: usage("uk"), us: usage("us") },
  lengths: { in: "inches, with eighths", cm: "centimetres" },
};

/** The choices of words and lengths by what they mean rather than by their codes. */
export const named = (columns: readonly ShownColumn[]): readonly ShownColumn[] =>
  columns.map((column) => ({
    ...column,
    choices: column.choices.map(({ value, name }) => ({ value, name: NAMES[column.heading]?.[value] ?? name })),
  }));
