import type { Draft } from "#lib/constructions/draft";

/** What changing a construction shows: what was typed so far, and what it would do. */
export interface DraftState {
  /** Rows copied and taken out so far, as `writeRowAct` writes them. */
  readonly acts: readonly string[];
  readonly draft: Draft;
  /** Null while something is wrong with the draft. */
  readonly effect: DraftEffect | null;
}

/** In words: the page has nothing to compute. */
export interface DraftEffect {
  /** One garment for the median body, before and after. */
  readonly one: readonly [string, string];
  /** Its labour; null for who may not see money, or when nobody has a skill it asks for. */
  readonly cost: readonly [string, string] | null;
  /** All garments of the production made by the version it began from. */
  readonly all: readonly [string, string];
  readonly changed: number;
  readonly unchanged: number;
  readonly materials: readonly { readonly name: string; readonly before: string; readonly after: string }[];
}
