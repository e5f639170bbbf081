import { parseArgs } from "node:util";
import { isoDate } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { meant } from "#lib/exchange/nearest";
import { failed, ok, type Result } from "#lib/result";

export type Command =
  | { readonly name: "help"; readonly about: "tarlatan" | "plan" | "check" }
  | { readonly name: "version" }
  | { readonly name: "check"; readonly folder: string }
  | PlanCommand;

export interface PlanCommand {
  readonly name: "plan";
  readonly folder: string;
  readonly out: string;
  readonly json: boolean;
  /** Null: no limit. */
  readonly seconds: number | null;
  /** Null: until the time is up. */
  readonly rounds: number | null;
  readonly seed: number;
  /** Null: today, or the production's first day if that is later. */
  readonly today: PlainDate | null;
}

const COMMANDS = ["plan", "check", "help"] as const;
const FLAGS = ["help", "json", "version"];
const VALUES = ["out", "seconds", "rounds", "seed", "today"];
const SECONDS = 10;

/** Reads the arguments; what is wrong with them comes back as one sentence. */
export const readCommand = (args: readonly string[]): Result<Command, string> => {
  const { tokens } = parseArgs({
    args: [...args],
    strict: false,
    tokens: true,
    options: {
      help: { type: "boolean", short: "h" },
      json: { type: "boolean" },
      version: { type: "boolean" },
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
  if (!COMMANDS.some((known) => known === command))
    return failed(`There is no command "${command}". ${meant(command, COMMANDS, "See --help.")}`);
  if (options.has("help")) return ok({ name: "help", about: aboutOf(command) });
  const [folder, ...more] = words;
  if (folder === undefined) return failed(`Say which folder: tarlatan ${command} FOLDER. See --help.`);
  if (more.length > 0) return failed(`One folder at a time: "${more[0]}" is one too many.`);
  if (command === "plan") return planOf(folder, options);
  const foreign = [...options.keys()][0];
  return foreign === undefined ? ok({ name: "check", folder }) : failed(`check has no option --${foreign}.`);
};

const aboutOf = (word: string | undefined) => (word === "plan" || word === "check" ? word : "tarlatan");

const planOf = (folder: string, options: ReadonlyMap<string, string>): Result<Command, string> => {
  const out = options.get("out");
  if (out === undefined) return failed("Say where the tables go: --out DIR.");
  const whole = (name: string, least: number): number | null | undefined => {
    const text = options.get(name);
    if (text === undefined) return null;
    return /^\d{1,9}$/.test(text) && Number(text) >= least ? Number(text) : undefined;
  };
  const seconds = whole("seconds", 1);
  const rounds = whole("rounds", 0);
  const seed = whole("seed", 0);
  if (seconds === undefined) return failed("--seconds takes a whole number of seconds, 1 or more.");
  if (rounds === undefined) return failed("--rounds takes a whole number, 0 or more; 0 keeps the plain rule.");
  if (seed === undefined) return failed("--seed takes a whole number, 0 or more.");
  const written = options.get("today");
  const today = written === undefined ? null : isoDate(written);
  if (written !== undefined && today === null) return failed(`--today takes a day like 2027-01-11, not "${written}".`);
  return ok({
    name: "plan",
    folder,
    out,
    json: options.has("json"),
    // With rounds asked for, the time must not decide the plan.
    seconds: seconds ?? (rounds === null ? SECONDS : null),
    rounds,
    seed: seed ?? 1,
    today,
  });
};
