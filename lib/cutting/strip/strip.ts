import type { Length } from "#lib/units/quantities";

/** A rectangle to cut: `width` across the roll, `height` along it. */
export interface Rectangle {
  readonly width: Length;
  readonly height: Length;
}

/** Rectangles to cut from a roll of a cuttable width. `turned` says that the grain is free: a piece may lie a quarter turn round. */
export interface StripJob {
  readonly width: Length;
  readonly pieces: readonly Rectangle[];
  readonly turned: boolean;
}

/** Where a piece lies, as it lies: `x` from the selvedge, `y` from the cut end. */
export interface Placed extends Rectangle {
  readonly x: Length;
  readonly y: Length;
}

/** Places in the order of the pieces, the length of roll they take, and a length below which no plan can be. */
export interface StripPlan {
  readonly placed: readonly Placed[];
  readonly height: Length;
  readonly bound: Length;
}
