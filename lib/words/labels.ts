import type { BothWords, FittingKind } from "#lib/constructions/construction";
import type { MilestoneKind } from "#lib/staging/staging";
import { both } from "./bothWords";

type Labels<K extends string> = Readonly<Record<K, BothWords>>;

export const MILESTONE_LABELS: Labels<MilestoneKind> = {
  measuring: both("Measuring"),
  "first fittings": both("First fittings"),
  "second fittings": both("Second fittings"),
  "load-in": both("Get-in", "Load-in"),
  "dress parade": both("Dress parade"),
  "dress rehearsal": both("Dress rehearsal"),
  opening: both("Opening"),
};

export const FITTING_LABELS: Labels<FittingKind> = {
  measure: both("Measuring"),
  toile: both("Toile fitting", "Muslin fitting"),
  first: both("First fitting, in cloth"),
  second: both("Second fitting"),
  final: both("Final fitting"),
  cover: both("Cover fitting", "Understudy fitting"),
};

export const EMPLOYMENT_LABELS: Labels<"staff" | "casual" | "outworker"> = {
  staff: both("Staff"),
  casual: both("Casual", "Overhire"),
  outworker: both("Outworker"),
};

export const STANDING_LABELS: Labels<"cast" | "cover"> = {
  cast: both("Cast"),
  cover: both("Cover", "Understudy"),
};

export const CALL_LABELS: Labels<"span" | "class" | "rehearsal" | "performance" | "rest"> = {
  span: both("Working day"),
  class: both("Class"),
  rehearsal: both("Rehearsal"),
  performance: both("Performance"),
  rest: both("Rest"),
};

export const BODY_LABELS: Labels<"cold" | "warm" | "not noted"> = {
  cold: both("Cold"),
  warm: both("Warm"),
  "not noted": both("Not noted"),
};

/** Where a garment stands in a plan. */
export const STATE_LABELS: Labels<"in time" | "late" | "unplaced" | "no work"> = {
  "in time": both("In time"),
  late: both("Late"),
  unplaced: both("Nobody can do it"),
  "no work": both("No work to do"),
};

export const CONDITION_LABELS: Labels<"good" | "worn" | "repair" | "retired"> = {
  good: both("Good"),
  worn: both("Worn"),
  repair: both("To be repaired"),
  retired: both("Retired"),
};
