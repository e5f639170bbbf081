import { choicesOf } from "#lib/staging/cells/cell";
import { type ColumnNote, columnNotes, headingOf } from "#lib/staging/column";
import { FILES } from "#lib/staging/files";
import type { Staging } from "#lib/staging/staging";
import type { Columns, StagingFile } from "#lib/staging/stagingFile";
import { fileKeyOf, rowsOf } from "./rows";

/** A column of a file, and what a person may write into it: plain data, as a form needs it. */
export interface FileColumn extends ColumnNote {
  readonly heading: string;
  /** It names the row, alone or with others. */
  readonly names: boolean;
  /** The only words it may hold, or codes of rows it may refer to with their names. */
  readonly choices: readonly { readonly value: string; readonly name: string }[];
}

/** The columns of one of a staging's files, in their order. */
export const fileColumns = (staging: Staging, file: string): readonly FileColumn[] => {
  const { schema, key } = FILES[fileKeyOf(file)] as unknown as StagingFile<Columns>;
  return Object.entries(schema(staging.production).shape).map(([column, cell]) => {
    const note = columnNotes.get(cell)!;
    const words = (choicesOf.get(cell)?.choices ?? []).map((word) => ({ value: word, name: word }));
    return {
      ...note,
      heading: headingOf(column),
      names: key.includes(column),
      choices: note.refersTo ? referred(staging, note.refersTo) : words,
    };
  });
};

const referred = (staging: Staging, target: NonNullable<ColumnNote["refersTo"]>): FileColumn["choices"] => {
  if (target === "constructions") {
    const { words } = staging.production;
    return [...new Map(staging.constructions.map(({ code, name }) => [code, { value: code, name: name[words] }])).values()];
  }
  return rowsOf(staging, FILES[target].name).map((row) => {
    const value = row.code ?? row.number ?? "";
    return { value, name: row.name ?? row.title ?? value };
  });
};
