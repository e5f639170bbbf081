import { parseArgs } from "node:util";
import { meant } from "#lib/exchange/nearest";
import { failed, ok, type Result } from "#lib/result";
import { type AskCommand, readAsk } from "./askCommand";
import { REMEDY_OPTIONS, type RemediesCommand, remediesOf } from "./remediesCommand";
import { readSearch, SEARCH_OPTIONS, type SearchOptions } from "./searchOptions";
import { type CompareCommand, compareOf, type SourcesCommand, sourcesOf, type VersionsCommand, versionsOf } from "./whatIfCommands";

export type Command =
  | { readonly name: "help"; readonly about: "tarlatan" | Helped }
  | { readonly name: "version" }
  | { readonly name: "check"; readonly folder: string }
  | PlanCommand
  | AskCommand
  | CompareCommand
  | SourcesCommand
  | RemediesCommand
  | VersionsCommand;

export interface PlanCommand extends SearchOptions {
  readonly name: "plan";
  readonly folder: string;
  readonly out: string;
  readonly json: boolean;
  /** Seconds for each cutting plan that is not proved at once; 0: none. */
  readonly cut: number;
}

/** The options of each command, apart from --help. */
const OPTIONS = {
  plan: ["out", "json", "cut", ...SEARCH_OPTIONS],
  check: [],
  /** Read apart: it takes the options of the question. */
  ask: [],
  compare: ["out", "json", ...SEARCH_OPTIONS],
  sources: ["hire", "hire-days", "buy", "buy-days", "json", ...SEARCH_OPTIONS],
  remedies: [...(Object.keys(REMEDY_OPTIONS) as (keyof typeof REMEDY_OPTIONS)[]), "json", ...SEARCH_OPTIONS],
  versions: ["pieces", "write", "json"],
} as const satisfies Readonly<Record<string, readonly string[]>>;
type Helped = keyof typeof OPTIONS;

const COMMANDS: readonly string[] = [...Object.keys(OPTIONS), "help"];
const FLAGS: readonly string[] = ["help", "json", "version", "write"];
const VALUES: readonly string[] = [...new Set(Object.values(OPTIONS).flat())].filter((name) => !FLAGS.includes(name));

/** Reads the arguments; what is wrong with them comes back as one sentence. */
export const readCommand = (args: readonly string[]): Result<Command, string> => {
  if (args[0] === "ask" && !args.some((word) => word === "--help" || word === "-h")) return readAsk(args.slice(1));
  const { tokens } = parseArgs({
    args: [...args],
    strict: false,
    tokens: true,
    options: {
      help: { type: "boolean", short: "h" },
      json: { type: "boolean" },
      version: { type: "boolean" },
      write: { type: "boolean" },
      ...Object.fromEntries(VALUES.map((name) => [name, { type: "string" as const }])),
    },
  });
  const words: string[] = [];
  const options = new Map<string, string>();
  for (const token of tokens) {
    if (token.kind === "positional") words.push(token.value);
    if (token.kind !== "option") continue;
    const isValue = VALUES.includes(token.name);
    if (!isValue && !FLAGS.includes(token.name))
      return failed(`There is no option ${token.rawName}. ${meant(token.name, [...FLAGS, ...VALUES], "See --help.")}`);
    if (isValue && (token.value === undefined || token.value === "")) return failed(`${token.rawName} needs a value.`);
    if (!isValue && token.value !== undefined) return failed(`${token.rawName} takes no value.`);
    options.set(token.name, token.value ?? "");
  }
  return commandOf(words, options);
};

const commandOf = ([command, ...words]: readonly string[], options: ReadonlyMap<string, string>): Result<Command, string> => {
  if (options.has("version")) return ok({ name: "version" });
  if (command === undefined || command === "help") return ok({ name: "help", about: aboutOf(words[0]) });
  if (!isHelped(command)) return failed(`There is no command "${command}". ${meant(command, COMMANDS, "See --help.")}`);
  if (options.has("help")) return ok({ name: "help", about: command });
  const known: readonly string[] = OPTIONS[command];
  const foreign = [...options.keys()].find((name) => !known.includes(name));
  if (foreign !== undefined) return failed(`${command} has no option --${foreign}.`);
  if (command === "compare") return compareOf(words, options);
  if (command === "sources") return sourcesOf(words, options);
  if (command === "remedies") return remediesOf(words, options);
  if (command === "versions") return versionsOf(words, options);
  const [folder, ...more] = words;
  if (folder === undefined) return failed(`Say which folder: tarlatan ${command} FOLDER. See --help.`);
  if (more.length > 0) return failed(`One folder at a time: "${more[0]}" is one too many.`);
  return command === "plan" ? planOf(folder, options) : ok({ name: "check", folder });
};

const isHelped = (word: string | undefined): word is Helped => word !== undefined && Object.hasOwn(OPTIONS, word);

const aboutOf = (word: string | undefined) => (isHelped(word) ? word : "tarlatan");

const planOf = (folder: string, options: ReadonlyMap<string, string>): Result<PlanCommand, string> => {
  const out = options.get("out");
  if (out === undefined) return failed("Say where the tables go: --out DIR.");
  const cut = options.get("cut") ?? "0";
  if (!/^\d{1,4}$/.test(cut)) return failed("--cut takes a whole number of seconds, 0 or more.");
  const search = readSearch(options);
  return search.ok ? ok({ name: "plan", folder, out, json: options.has("json"), cut: Number(cut), ...search.value }) : search;
};
