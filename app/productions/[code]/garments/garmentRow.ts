import type { PlainDate } from "#lib/calendar/plainDate";
import type { Minutes } from "#lib/units/quantities";

export const GARMENT_STATES = ["late", "unplaced", "ready", "unlevelled"] as const;
export type GarmentStateCode = (typeof GARMENT_STATES)[number];

/** One garment as the list shows it: plain values, so that it may cross to the browser. */
export interface GarmentRow {
  readonly number: string;
  readonly href: string;
  readonly name: string;
  readonly role: string;
  readonly made: string;
  /** Name of its construction; empty when nothing is made of it. */
  readonly as: string;
  /** Make, pull from stock, alter, hire, buy, in the company's words. */
  readonly source: string;
  readonly set: string;
  readonly wearers: string;
  /** For whom there is one: each performer, each place, the role. */
  readonly shared: string;
  /** Weight of a day late; 1 is ordinary. */
  readonly weight: number;
  readonly minutes: Minutes;
  readonly fittings: number;
  /** Null when it has no place in the plan, or there is no plan. */
  readonly ready: PlainDate | null;
  readonly due: PlainDate | null;
  /** Milestone it is wanted for. */
  readonly wantedFor: string;
  readonly state: GarmentStateCode;
  readonly minutesLate: Minutes;
  /** `2 working days after dress parade`, `in time` ... */
  readonly said: string;
}
