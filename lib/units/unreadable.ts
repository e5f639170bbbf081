import { failed } from "#lib/result";

/** Why a person's text could not be read, and what to write instead. */
export interface Unreadable {
  readonly problem: string;
  readonly mend: string;
}

export const unreadable = (problem: string, mend: string): { readonly ok: false; readonly error: Unreadable } => failed({ problem, mend });
