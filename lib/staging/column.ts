import * as z from "zod";
import type { Cell } from "./cells/cell";

/** What a column may refer to, by the code in its first column (constructions: by their own code). */
export type Referred =
  | "approvals"
  | "constructions"
  | "costumes"
  | "makers"
  | "materials"
  | "milestones"
  | "performers"
  | "roles"
  | "scenes"
  | "sets"
  | "sizes"
  | "stock";

/** What a person needs to know to fill a column in. */
export interface ColumnNote {
  readonly meaning: string;
  /** Unit the cell is written with; absent for plain text. */
  readonly unit?: string;
  readonly example: string;
  /** What an empty cell means; absent when the cell must be filled in. */
  readonly empty?: string;
  /** Where the code written here must be found. */
  readonly refersTo?: Referred;
}

export const columnNotes = z.registry<ColumnNote>();

/** A cell with its note: the one definition of a column. */
export const column = <T>(of: Cell<T>, note: ColumnNote): Cell<T> => of.register(columnNotes, note);

/** `napeToWaist` stands in the file as `nape_to_waist`. */
export const headingOf = (key: string): string => key.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

/** Headings are matched without regard to case, spaces, underscores and hyphens. */
export const plainHeading = (heading: string): string => heading.toLowerCase().replace(/[\s_-]+/g, "");
