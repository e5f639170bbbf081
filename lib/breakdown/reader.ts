import type { BothWords } from "#lib/constructions/construction";
import type { LengthSystem } from "#lib/units/showLength";

/** For whom arithmetic and notes are written out. */
export interface Reader {
  readonly words: keyof BothWords;
  readonly lengths: LengthSystem;
}
