import type { Construction } from "#lib/constructions/construction";
import type { Fault } from "#lib/exchange/fault";
import { suggestFor } from "#lib/exchange/nearest";
import { failed, ok, type Result } from "#lib/result";
import { FILES } from "./files";
import { doubledRows, knownCodes, unknownReferences } from "./references";
import { RULES } from "./rules";
import { garmentFaults } from "./rules/garmentFaults";
import type { Staging } from "./staging";
import type { Tables } from "./tables";
import { toStaging } from "./toStaging";

const MOST_SUGGESTIONS = 200;

/**
 * What every staging must keep to, however its rows came: no doubled rows, no unknown codes, rows and files that agree.
 * @param before faults found while the rows were read; they are given together with those found here.
 * @param unknown files whose rows cannot be told, `constructions/` among them: others that refer to them are not to blame.
 */
export const checkTables = (
  tables: Tables,
  constructions: readonly Construction[],
  before: readonly Fault[] = [],
  unknown: readonly string[] = [],
): Result<Staging, readonly Fault[]> => {
  const suggest = suggestFor(MOST_SUGGESTIONS);
  const faults = [
    ...before,
    ...doubledRows(tables),
    ...unknownReferences(tables, knownCodes(tables, [...new Set(constructions.map(({ code }) => code))]), unknown, suggest),
    ...RULES.filter(({ reads }) => reads.every((file) => !unknown.includes(FILES[file].name))).flatMap(({ rule }) =>
      rule(tables, constructions, suggest),
    ),
  ];
  if (faults.length > 0) return failed(inOrder(faults));
  const staging = toStaging(tables, constructions);
  // Garments have numbers only once the casting and the piece list are right.
  const ofNumbers = garmentFaults(staging, tables, suggest);
  return ofNumbers.length > 0 ? failed(ofNumbers) : ok(staging);
};

/** By file, then by row; faults of one row stay in the order they were found. */
const inOrder = (faults: readonly Fault[]): readonly Fault[] => {
  const files = [...new Set(faults.map((fault) => fault.file))];
  return [...faults].sort((a, b) => files.indexOf(a.file) - files.indexOf(b.file) || (a.row ?? 0) - (b.row ?? 0));
};
