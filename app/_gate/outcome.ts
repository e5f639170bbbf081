import type { z } from "zod";
import type { Fault } from "#lib/exchange/fault";

/** Rows as another has left them, beside what this person wants. */
export interface Clash {
  readonly rows: readonly ClashingRow[];
  /** The edit over what the other has made, as JSON: it is sent back, as `over`, by who keeps theirs. */
  readonly over: string;
}

export interface ClashingRow {
  readonly file: string;
  readonly name: string;
  /** The other has taken it out. */
  readonly gone: boolean;
  /** Columns in which they differ; an empty cell is empty text, a row taken out has none. */
  readonly cells: readonly { readonly column: string; readonly theirs: string | null; readonly mine: string | null }[];
}

/** A failure a person can do something about. */
export interface Refusal {
  readonly ok: false;
  readonly message: string;
  /** What is wrong with each field, by its name. */
  readonly fields: Readonly<Record<string, string>>;
  /** What was typed, so that it need not be typed again; never a password. */
  readonly kept: Readonly<Record<string, string>>;
  /** What is wrong in the files that were given. */
  readonly faults: readonly Fault[];
  /** What somebody else has made meanwhile of the rows that were to be changed. */
  readonly clash?: Clash;
}

/** How an action ended; `to` is the page to go on to. */
export type Outcome<Value = null> =
  | { readonly ok: true; readonly message: string; readonly to: string | null; readonly value: Value }
  | Refusal;

/** It went well; with `to`, on to another page. */
export const done = (message: string, to: string | null = null): Outcome => ({ ok: true, message, to, value: null });

/** It went well, and this is what there is to show. */
export const shown = <Value>(message: string, value: Value): Outcome<Value> => ({ ok: true, message, to: null, value });

export const refused = (message: string, fields: Readonly<Record<string, string>> = {}): Refusal => ({
  ok: false,
  message,
  fields,
  kept: {},
  faults: [],
});

export const faulty = (message: string, faults: readonly Fault[]): Refusal => ({ ...refused(message), faults });

/** The first thing wrong with each field. */
export const fieldsOf = (error: z.ZodError): Record<string, string> => {
  const fields: Record<string, string> = {};
  for (const issue of error.issues) fields[String(issue.path[0] ?? "")] ??= issue.message;
  return fields;
};

/** Longer than anything that is typed by hand. */
const MOST_KEPT = 500;

/** The words typed into a form, without secrets and files. */
export const keptOf = (form: FormData): Record<string, string> =>
  Object.fromEntries(
    [...form.entries()].filter(
      (entry): entry is [string, string] => typeof entry[1] === "string" && entry[1].length <= MOST_KEPT && !/password|^\$/i.test(entry[0]),
    ),
  );
