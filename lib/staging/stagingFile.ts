import type * as z from "zod";
import type { LengthSystem } from "#lib/units/showLength";
import type { Cell } from "./cells/cell";

/** What the production says about how the other files are written. */
export interface Written {
  readonly lengths: LengthSystem;
  readonly currency: string;
}

/** `any` only here: the columns of a file are cells of different values. */
// biome-ignore lint/suspicious/noExplicitAny: a row type is recovered from the schema itself
export type Columns = Readonly<Record<string, Cell<any>>>;

/** One CSV file of a staging: its columns, in order, as a zod schema. */
export interface StagingFile<C extends Columns> {
  readonly name: string;
  readonly about: string;
  readonly schema: (written: Written) => z.ZodObject<C>;
  /** Columns that together name a row: no two rows may agree in all of them. Empty: rows have no names. */
  readonly key: readonly (keyof C & string)[];
}

/** A file whose schema is made once for each way of writing: making one takes longer than reading a row by it. */
export const stagingFile = <C extends Columns>(file: StagingFile<C>): StagingFile<C> => {
  const made = new Map<string, z.ZodObject<C>>();
  return {
    ...file,
    schema: ({ lengths, currency }) => {
      const name = `${lengths} ${currency}`;
      const schema = made.get(name) ?? file.schema({ lengths, currency });
      made.set(name, schema);
      return schema;
    },
  };
};

export type RowOf<F> = F extends StagingFile<infer C> ? z.output<z.ZodObject<C>> : never;
