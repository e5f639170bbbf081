import type { PlainDate } from "#lib/calendar/plainDate";
import type { Length } from "#lib/units/quantities";

/** What is taken with a tape, by its trade name. All are lengths. */
export const MEASUREMENTS = [
  "height",
  "bust",
  "highBust",
  "underbust",
  "waist",
  "highHip",
  "hip",
  "girth",
  "napeToWaist",
  "shoulder",
  "backWidth",
  "neck",
  "armscye",
  "armToElbow",
  "armToWrist",
  "insideLeg",
  "waistToKnee",
  "waistToFloor",
  "rise",
  "thigh",
  "calf",
  "head",
  "shoe",
  "basqueLine",
  "nippleToNipple",
  "frontShoulderToWaist",
  "hemFromFloor",
] as const;
export type Measurement = (typeof MEASUREMENTS)[number];
export type MeasurementValues = Readonly<Partial<Record<Measurement, Length>>>;

/** A worked rib cage is larger: a sheet says whether the body was warm. */
export type BodyState = "cold" | "warm" | "not noted";

/** Values taken at one time from one performer, or the values a size group stands for. */
export interface MeasurementSheet {
  readonly of: { readonly performer: string } | { readonly sizeGroup: string };
  readonly taken: PlainDate;
  readonly body: BodyState;
  readonly values: MeasurementValues;
}
