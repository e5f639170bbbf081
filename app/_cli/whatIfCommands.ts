import { failed, ok, type Result } from "#lib/result";
import { readSearch, type SearchOptions } from "./searchOptions";

export interface CompareCommand extends SearchOptions {
  readonly name: "compare";
  readonly before: string;
  readonly after: string;
  /** Null: no tables are written. */
  readonly out: string | null;
  readonly json: boolean;
}

export interface SourcesCommand extends SearchOptions {
  readonly name: "sources";
  readonly folder: string;
  readonly piece: string;
  /** As written; the production says which currency. */
  readonly hire: string | null;
  readonly buy: string | null;
  readonly hireDays: number | null;
  readonly buyDays: number | null;
  readonly json: boolean;
}

export interface VersionsCommand {
  readonly name: "versions";
  readonly folder: string;
  readonly construction: string;
  readonly file: string;
  /** Codes of pieces to move; null: all. */
  readonly pieces: readonly string[] | null;
  readonly write: boolean;
  readonly json: boolean;
}

type Options = ReadonlyMap<string, string>;

/** Rounds for each of up to five plans, when nobody says how many. */
const FEW_ROUNDS = 3;

export const compareOf = (words: readonly string[], options: Options): Result<CompareCommand, string> => {
  const [before, after, ...more] = words;
  if (before === undefined || after === undefined || more.length > 0)
    return failed("Say which two folders: tarlatan compare FOLDER-BEFORE FOLDER-AFTER. See --help.");
  const search = readSearch(options);
  if (!search.ok) return search;
  return ok({ name: "compare", before, after, out: options.get("out") ?? null, json: options.has("json"), ...search.value });
};

export const sourcesOf = (words: readonly string[], options: Options): Result<SourcesCommand, string> => {
  const [folder, piece, ...more] = words;
  if (folder === undefined || piece === undefined || more.length > 0)
    return failed("Say which folder and which piece: tarlatan sources FOLDER PIECE. See --help.");
  const search = readSearch(options, FEW_ROUNDS);
  if (!search.ok) return search;
  const days = (["hire", "buy"] as const).map((source) => options.get(`${source}-days`));
  if (days.some((text) => text !== undefined && !/^\d{1,3}$/.test(text)))
    return failed("--hire-days and --buy-days take a whole number of days, 0 to 999.");
  const [hireDays, buyDays] = days.map((text) => (text === undefined ? null : Number(text))) as [number | null, number | null];
  const [hire, buy] = [options.get("hire") ?? null, options.get("buy") ?? null];
  return ok({ name: "sources", folder, piece, hire, buy, hireDays, buyDays, json: options.has("json"), ...search.value });
};

export const versionsOf = (words: readonly string[], options: Options): Result<VersionsCommand, string> => {
  const [folder, construction, file, ...more] = words;
  if (folder === undefined || construction === undefined || file === undefined || more.length > 0)
    return failed("Say which folder, construction and file: tarlatan versions FOLDER CONSTRUCTION NEW.json. See --help.");
  const listed = options
    .get("pieces")
    ?.split(",")
    .map((code) => code.trim())
    .filter((code) => code !== "");
  return ok({
    name: "versions",
    folder,
    construction,
    file,
    pieces: listed ?? null,
    write: options.has("write"),
    json: options.has("json"),
  });
};
