import type { Construction } from "#lib/constructions/construction";
import type { Fault } from "#lib/exchange/fault";
import type { Suggest } from "#lib/exchange/nearest";
import type { Tables } from "../tables";

/** What no single cell can tell: rows and files that must agree. */
export type Rule = (tables: Tables, constructions: readonly Construction[], suggest: Suggest) => readonly Fault[];

export const faultIn = (file: string, row: number | null, column: string | null, problem: string, mend: string): Fault => ({
  file,
  row,
  column,
  problem,
  mend,
});
