/** One thing that an import would change, in the words of the files. */
export interface Change {
  readonly file: string;
  readonly kind: "added" | "removed" | "changed" | "renumbered";
  /** The row, by what names it. */
  readonly name: string;
  /** Heading of the cell that changes; null when it is the whole row. */
  readonly field: string | null;
  readonly from: string | null;
  readonly to: string | null;
  /** The same as a sentence. */
  readonly text: string;
}
