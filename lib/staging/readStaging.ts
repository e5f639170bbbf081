import type { Construction } from "#lib/constructions/construction";
import { readConstruction } from "#lib/constructions/readConstruction";
import type { Fault } from "#lib/exchange/fault";
import { suggestFor } from "#lib/exchange/nearest";
import { failed, ok, type Result } from "#lib/result";
import { nameFiles } from "./fileNames";
import { FILES } from "./files";
import { doubledRows, knownCodes, unknownReferences } from "./references";
import { RULES } from "./rules";
import { garmentFaults } from "./rules/garmentFaults";
import type { Staging } from "./staging";
import { readTables } from "./tables";
import { toStaging } from "./toStaging";

const MOST_SUGGESTIONS = 200;

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
  const suggest = suggestFor(MOST_SUGGESTIONS);
  const faults = [
    ...ofNames,
    ...constructions.faults,
    ...ofCells,
    ...doubledRows(tables),
    ...unknownReferences(tables, knownCodes(tables, [...new Set(constructions.read.map(({ code }) => code))]), unreadable, suggest),
    ...RULES.filter(({ reads }) => reads.every((file) => !unknown.includes(FILES[file].name))).flatMap(({ rule }) =>
      rule(tables, constructions.read, suggest),
    ),
  ];
  if (faults.length > 0) return failed(inOrder(faults));
  const staging = toStaging(tables, constructions.read);
  // Garments have numbers only once the casting and the piece list are right.
  const ofNumbers = garmentFaults(staging, tables, suggest);
  return ofNumbers.length > 0 ? failed(ofNumbers) : ok(staging);
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

/** By file, then by row; faults of one row stay in the order they were found. */
const inOrder = (faults: readonly Fault[]): readonly Fault[] => {
  const files = [...new Set(faults.map((fault) => fault.file))];
  return [...faults].sort((a, b) => files.indexOf(a.file) - files.indexOf(b.file) || (a.row ?? 0) - (b.row ?? 0));
};
