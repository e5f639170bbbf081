import { type WrittenTable, writeTable } from "#lib/staging/fromStaging";
import type { Staging } from "#lib/staging/staging";
import { FILE_KEYS, type FileKey } from "#lib/staging/tables";
import type { RowChange } from "./edit";
import { longestRising } from "./longestRising";
import { rowTexts, sameCells } from "./rows";

/**
 * The changes of rows that make one staging into the other, so that whatever changes a staging can be written as a pure function of it.
 * A row that moved in its list is taken out and added at its new place. Constructions are not rows: they are kept by version.
 */
export const changesBetween = (before: Staging, after: Staging): readonly RowChange[] =>
  FILE_KEYS.filter((key) => partOf(before, key) !== partOf(after, key)).flatMap((key) =>
    tableChanges(writeTable(before, key), writeTable(after, key)),
  );

const partOf = (staging: Staging, key: FileKey): unknown => (key === "sizes" ? staging.sizeGroups : staging[key]);

const tableChanges = (was: WrittenTable, is: WrittenTable): readonly RowChange[] => {
  const places = new Map(namesIn(was).map((name, at) => [name, at]));
  const from = namesIn(is).map((name) => places.get(name) ?? null);
  const stay = longestRising(from);
  const kept = new Set(from.filter((_, at) => stay.has(at)));
  const out = was.rows.flatMap((row, at): readonly RowChange[] =>
    kept.has(at) ? [] : [{ file: was.file, before: rowTexts(was, row), after: null, at }],
  );
  const rest = is.rows.flatMap((row, at): readonly RowChange[] => {
    if (!stay.has(at)) return [{ file: is.file, before: null, after: rowTexts(is, row), at }];
    const old = was.rows[from[at]!]!;
    return sameCells(old, row) ? [] : [{ file: is.file, before: rowTexts(was, old), after: rowTexts(is, row) }];
  });
  return [...out, ...rest];
};

/** Names of the rows; of rows of one name the first is matched with the first. Recasting a place is a change of that place. */
const namesIn = ({ file, headings, key, rows }: WrittenTable): readonly string[] => {
  const naming = key.filter((column) => file !== "casting.csv" || headings[column] !== "performer");
  const counted = new Map<string, number>();
  return rows.map((cells) => {
    const name = JSON.stringify(naming.length > 0 ? naming.map((column) => cells[column]) : cells);
    const count = (counted.get(name) ?? 0) + 1;
    counted.set(name, count);
    return `${name}${count}`;
  });
};
