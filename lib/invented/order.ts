import type { PerMille } from "#lib/units/quantities";

/** What an invented workroom is to be like. The same order gives the same stagings, whoever asks. */
export interface Order {
  /** Garments of all productions together. */
  readonly garments: number;
  readonly makers: number;
  /** From the first day to the last dress parade; null: as many as garments of the usual work take at this tightness. */
  readonly weeks: number | null;
  /** Share of the makers' productive hours before the last parade that the work takes, as near as the kinds of garment allow. */
  readonly tightness: PerMille;
  /** Productions that share the workroom, with parades one after the other. */
  readonly productions: number;
  readonly seed: number;
}

/** Weekly hours of everybody, and the part of them that goes into tasks (common practice, no source). */
export const WEEK_MINUTES = 40 * 60;
export const PRODUCTIVE: PerMille = 800;

/** Work on a garment of a full-length ballet in the mean, bought and altered ones included (ours: nine makers, fourteen weeks, 180 garments). */
export const USUAL_MINUTES = 20 * 60;

/** Standard minutes of work that so many makers do in a week when the workroom is this tight. */
export const weeklyMinutes = ({ makers, tightness }: Pick<Order, "makers" | "tightness">): number =>
  (makers * WEEK_MINUTES * PRODUCTIVE * tightness) / 1_000_000;
