/** A table as it is written to a file or printed: headings and rows of text. */
export interface Sheet {
  /** Name of its file, without extension. */
  readonly name: string;
  readonly title: string;
  /** Headings: `snake_case`, with the unit where there is one. */
  readonly headings: readonly string[];
  readonly rows: readonly (readonly string[])[];
}
