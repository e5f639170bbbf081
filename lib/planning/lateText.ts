import { showHours } from "#lib/units/hours";
import type { GarmentState } from "./stagingPlan";

/** `2 working days late`; within the day it was due, by the clock: `1 h 30 late`. */
export const lateText = ({ daysLate, minutesLate }: Pick<GarmentState, "daysLate" | "minutesLate">): string =>
  `${daysLate > 0 ? `${daysLate} working ${daysLate === 1 ? "day" : "days"}` : showHours(minutesLate)} late`;
