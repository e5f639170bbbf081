import type { Fault } from "#lib/exchange/fault";

/** A row of one of a staging's files as a person would write it: the text of each cell by its heading. */
export type RowTexts = Readonly<Record<string, string>>;

/** One row added, changed or taken out. A changed row keeps its place in the list, even when the cells that name it change. */
export interface RowChange {
  /** Name of the file the row belongs to: `makers.csv`. */
  readonly file: string;
  /** What the row was when the person looked at it; null for a new one. */
  readonly before: RowTexts | null;
  /** What it shall be; null to take it out. */
  readonly after: RowTexts | null;
  /** Place in its file, from 0, that an added row takes or a row taken out had; without one it is added at the end. */
  readonly at?: number;
}

/** What a person does at once, and takes back at once. */
export interface Edit {
  /** In the history: `Makers: Bryn Sallow, pace`. */
  readonly title: string;
  readonly changes: readonly RowChange[];
}

/** A row that somebody else has changed since the person looked at it. */
export interface RowConflict {
  /** What the person wants. */
  readonly mine: RowChange;
  /** What the row is now; null when it is gone. */
  readonly theirs: RowTexts | null;
}

/** Why an edit was not kept. Nothing of it was written. */
export type EditRefusal =
  | { readonly kind: "conflict"; readonly conflicts: readonly RowConflict[] }
  | { readonly kind: "faults"; readonly faults: readonly Fault[] };
