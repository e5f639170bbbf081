import { failed, ok, type Result } from "#lib/result";
import { readSearch, type SearchOptions } from "./searchOptions";

export interface AskCommand extends SearchOptions {
  readonly name: "ask";
  readonly folder: string;
  /** Null: list the questions. */
  readonly question: string | null;
  readonly json: boolean;
  /** The question's own options, as given. */
  readonly options: ReadonlyMap<string, string>;
}

const SEARCH = ["rounds", "seconds", "seed", "today"];
/** Rounds when nobody says how many: an answer in seconds, and the same one each time. */
const USUAL_ROUNDS = 10;

/** Reads `FOLDER [QUESTION] [--option value ...]`: what is wrong with it comes back as one sentence. */
export const readAsk = (args: readonly string[]): Result<AskCommand, string> => {
  const words: string[] = [];
  const search = new Map<string, string>();
  const options = new Map<string, string>();
  let json = false;
  for (let at = 0; at < args.length; at++) {
    const [, name, given] = /^--([^=]+)(?:=(.*))?$/.exec(args[at]!) ?? [];
    if (name === undefined) words.push(args[at]!);
    else if (name === "json") json = true;
    else {
      const value = given ?? args[++at] ?? "";
      if (value === "") return failed(`--${name} needs a value.`);
      (SEARCH.includes(name) ? search : options).set(name, value);
    }
  }
  const [folder, question, ...more] = words;
  if (folder === undefined) return failed("Say which folder: tarlatan ask FOLDER QUESTION. See --help.");
  if (more.length > 0) return failed(`One question at a time: "${more[0]}" is one too many.`);
  const read = readSearch(search, USUAL_ROUNDS);
  return read.ok ? ok({ name: "ask", folder, question: question ?? null, json, options, ...read.value }) : read;
};
