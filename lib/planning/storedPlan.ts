import type { WallMinute } from "#lib/calendar/plainDate";
import type { Skill } from "#lib/labour/skills";
import type { Bounds, Interval, Measures } from "#lib/levelling/problem";

/**
 * A plan as it is kept: by the stable keys of its nodes and the codes of people, on the wall clock, so that it can be read
 * beside a staging that has changed since. Stretches follow from the calendars when it is read again; they are kept for the other productions of the
 * workroom, which may not take the same time.
 */
export interface StoredPlan {
  readonly seed: number;
  readonly rounds: number;
  readonly schedules: number;
  readonly rule: string;
  /** Revision of the production's data it was levelled from: another one there now means the plan is stale. */
  readonly inputRevision: number;
  readonly measures: Measures;
  readonly bounds: Bounds;
  readonly rows: readonly StoredRow[];
  readonly visits: readonly StoredVisit[];
}

export interface StoredRow {
  readonly key: string;
  /** Null, with a reason, when the work could not be placed. */
  readonly start: WallMinute | null;
  readonly end: WallMinute | null;
  readonly makers: readonly { readonly maker: string; readonly skill: Skill }[];
  readonly overtime: boolean;
  /** When its makers really work. */
  readonly worked: readonly Interval[];
  /** Kind of the machine it takes; null for none, or when nobody wrote it down. */
  readonly machine: string | null;
  readonly unplaced: { readonly reason: string; readonly detail: string } | null;
}

export interface StoredVisit {
  readonly performer: string;
  readonly fitter: string;
  readonly room: string;
  readonly start: WallMinute;
  readonly end: WallMinute;
  /** Keys of its fittings, in order. */
  readonly fittings: readonly string[];
}
