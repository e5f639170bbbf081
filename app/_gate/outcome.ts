import type { z } from "zod";

/** A failure a person can do something about. */
export interface Refusal {
  readonly ok: false;
  readonly message: string;
  /** What is wrong with each field, by its name. */
  readonly fields: Readonly<Record<string, string>>;
  /** What was typed, so that it need not be typed again; never a password. */
  readonly kept: Readonly<Record<string, string>>;
}

/** How an action ended. */
export type Outcome = { readonly ok: true; readonly message: string; readonly to?: string } | Refusal;

/** It went well; with `to`, on to another page. */
export const done = (message: string, to?: string): Outcome => ({ ok: true, message, to });

export const refused = (message: string, fields: Readonly<Record<string, string>> = {}): Refusal => ({
  ok: false,
  message,
  fields,
  kept: {},
});

/** The first thing wrong with each field. */
export const fieldsOf = (error: z.ZodError): Record<string, string> => {
  const fields: Record<string, string> = {};
  for (const issue of error.issues) fields[String(issue.path[0] ?? "")] ??= issue.message;
  return fields;
};

/** The words typed into a form, without secrets and files. */
export const keptOf = (form: FormData): Record<string, string> =>
  Object.fromEntries(
    [...form.entries()].filter((entry): entry is [string, string] => typeof entry[1] === "string" && !/password|^\$/i.test(entry[0])),
  );
