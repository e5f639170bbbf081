import { failed, ok, type Result } from "#lib/result";
import type { Remedy } from "#lib/whatif/remedies/remedy";
import { readSearch, type SearchOptions } from "./searchOptions";

export interface RemediesCommand extends SearchOptions {
  readonly name: "remedies";
  readonly folder: string;
  /** As typed; none: those that the causes of lateness suggest. */
  readonly asked: readonly { readonly kind: Remedy["kind"]; readonly parts: readonly string[] }[];
  readonly json: boolean;
}

/** Its options, each with the kind of remedy it asks about. */
export const REMEDY_OPTIONS = {
  hands: "maker",
  overtime: "overtime",
  outwork: "outwork",
  simpler: "simplify",
  sooner: "deliver",
  "one-more": "machine",
} as const satisfies Readonly<Record<string, Remedy["kind"]>>;

/** Rounds of each plan, when nobody says how many: seconds for a company's staging. */
const FEW_ROUNDS = 3;

export const remediesOf = (words: readonly string[], options: ReadonlyMap<string, string>): Result<RemediesCommand, string> => {
  const [folder, ...more] = words;
  if (folder === undefined) return failed("Say which folder: tarlatan remedies FOLDER. See --help.");
  if (more.length > 0) return failed(`One folder at a time: "${more[0]}" is one too many.`);
  const search = readSearch(options, FEW_ROUNDS);
  if (!search.ok) return search;
  const asked = Object.entries(REMEDY_OPTIONS).flatMap(([option, kind]) => {
    const text = options.get(option);
    return text === undefined ? [] : [{ kind, parts: text.split(":") }];
  });
  return ok({ name: "remedies", folder, asked, json: options.has("json"), ...search.value });
};
