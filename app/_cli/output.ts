/** Where a command's lines go. Plain text without colours, so that a file, a pipe and NO_COLOR get the same. */
export interface Output {
  /** Data: what another program may read. */
  readonly data: (text: string) => void;
  /** Words for the person at the keyboard. */
  readonly words: (text: string) => void;
}
