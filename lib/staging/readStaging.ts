import type { Construction } from "#lib/constructions/construction";
import { readConstruction } from "#lib/constructions/readConstruction";
import type { Fault } from "#lib/exchange/fault";
import { failed, type Result } from "#lib/result";
import { checkTables } from "./checkTables";
import { nameFiles } from "./fileNames";
import type { Staging } from "./staging";
import { readTables } from "./tables";

/**
 * Reads a staging from its files by name: CSV tables and `constructions/NAME.json`. Other files are passed over; a table that is not
 * there has no rows. Every fault of every file is given at once, by file and row.
 */
export const readStaging = (files: ReadonlyMap<string, string>): Result<Staging, readonly Fault[]> => {
  const { texts, faults: ofNames } = nameFiles(files);
  if (ofNames.some((fault) => fault.file === "staging")) return failed(ofNames);
  const constructions = readConstructions(texts);
  const { tables, faults: ofCells, unknown } = readTables(texts);
  const unreadable = constructions.faults.length > 0 ? [...unknown, "constructions/"] : unknown;
  return checkTables(tables, constructions.read, [...ofNames, ...constructions.faults, ...ofCells], unreadable);
};

const readConstructions = (
  texts: ReadonlyMap<string, string>,
): { readonly read: readonly Construction[]; readonly faults: readonly Fault[] } => {
  const read: Construction[] = [];
  const faults: Fault[] = [];
  const fileOf = new Map<string, string>();
  for (const [file, text] of [...texts].filter(([name]) => name.startsWith("constructions/")).sort(([a], [b]) => (a < b ? -1 : 1))) {
    const construction = readConstruction(text, file);
    if (!construction.ok) {
      faults.push(...construction.error);
      continue;
    }
    const { code, version } = construction.value;
    const name = `version ${version} of "${code}"`;
    const other = fileOf.get(name);
    if (other !== undefined)
      faults.push({
        file,
        row: null,
        column: "version",
        problem: `${other} is ${name} too.`,
        mend: "Raise the version, or keep one of them.",
      });
    fileOf.set(name, file);
    read.push(construction.value);
  }
  return { read, faults };
};
