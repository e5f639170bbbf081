/** One thing wrong with what a person gave us: where it stands and how to mend it. */
export interface Fault {
  /** File as the person named it, for example `pieces.csv`. */
  readonly file: string;
  /** 1-based line of the spreadsheet (the heading is row 1); null when the whole file is meant. */
  readonly row: number | null;
  /** Heading of the column; null when the whole row is meant. */
  readonly column: string | null;
  readonly problem: string;
  /** What to do about it, as a sentence. */
  readonly mend: string;
}

/** `pieces.csv:4:source: "bild" is not a source. Write build, pull, alter, hire or buy.` */
export const faultText = (fault: Fault): string =>
  `${[fault.file, fault.row, fault.column].filter((part) => part !== null).join(":")}: ${fault.problem} ${fault.mend}`;
