import type { Fault } from "#lib/exchange/fault";
import type { Suggest } from "#lib/exchange/nearest";
import { columnNotes, headingOf, type Referred } from "./column";
import { FILES } from "./files";
import { FILE_KEYS, type Tables } from "./tables";

type AnyRows = readonly { readonly row: number; readonly values: Readonly<Record<string, unknown>> }[];

/** Codes that other files may refer to, in the order of the file. */
export const knownCodes = (tables: Tables, constructions: readonly string[]): ReadonlyMap<Referred, readonly string[]> => {
  const known = new Map<Referred, readonly string[]>([["constructions", constructions]]);
  for (const file of FILE_KEYS) {
    const column = FILES[file].key[0];
    if (column === "code" || column === "number")
      known.set(
        file as Referred,
        (tables[file] as AnyRows).map(({ values }) => values[column]).filter((code) => typeof code === "string"),
      );
  }
  return known;
};

/** Codes written in a column that stand nowhere in the file it refers to; not asked of the files whose rows are `unknown`. */
export const unknownReferences = (
  tables: Tables,
  known: ReadonlyMap<Referred, readonly string[]>,
  unknown: readonly string[],
  suggest: Suggest,
): readonly Fault[] => {
  const faults: Fault[] = [];
  for (const key of FILE_KEYS) {
    const file = FILES[key];
    const shape = file.schema({ lengths: "in", currency: "GBP" }).shape;
    for (const [column, cell] of Object.entries(shape)) {
      const target = columnNotes.get(cell)?.refersTo;
      if (target === undefined) continue;
      const codes = new Set(known.get(target));
      const place = target === "constructions" ? "constructions/" : FILES[target].name;
      if (unknown.includes(place)) continue;
      for (const { row, values } of tables[key] as AnyRows) {
        const code = values[column];
        if (typeof code !== "string" || codes.has(code)) continue;
        faults.push({
          file: file.name,
          row,
          column: headingOf(column),
          problem: `"${code}" is not in ${place}.`,
          mend: suggest(code, codes, target === "constructions" ? "Add its file." : "Add a row for it there."),
        });
      }
    }
  }
  return faults;
};

/** Rows that bear the same name as one above them. */
export const doubledRows = (tables: Tables): readonly Fault[] =>
  FILE_KEYS.flatMap((key) => {
    const file = FILES[key];
    if (file.key.length === 0) return [];
    const seen = new Map<string, number>();
    return (tables[key] as AnyRows).flatMap(({ row, values }): Fault[] => {
      const parts = file.key.map((column) => values[column]);
      if (parts.some((part) => part === undefined)) return [];
      const name = JSON.stringify(parts);
      const above = seen.get(name);
      if (above === undefined) seen.set(name, row);
      const columns = file.key.map(headingOf).join(", ");
      return above === undefined
        ? []
        : [
            {
              file: file.name,
              row,
              column: headingOf(file.key[0] ?? ""),
              problem: `Row ${above} has the same ${columns}.`,
              mend: file.key.length === 1 ? "Give one of them another." : "Take one out, or change one of these.",
            },
          ];
    });
  });
