import type { Choices } from "./placeNode";
import type { Score } from "./score";

/** A plan in the search: how it was made and how good it is. */
export interface Candidate {
  /** Nodes in the order of their starts. */
  readonly order: Int32Array;
  readonly choices: Choices;
  readonly score: Score;
  readonly rule: string;
}

/** A candidate to be made: keys for the order, and the choices. */
export interface Draft {
  readonly keys: Float64Array;
  readonly choices: Choices;
  readonly name: string;
}
