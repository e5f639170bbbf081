import { wallMinute } from "#lib/calendar/clock";
import type { GarmentState } from "#lib/planning/stagingPlan";
import type { Staging } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import { plural } from "./plural";

/** How late a garment is, and for what: `2 days after dress parade`, `1 h 30 after dress parade` on the day itself. */
export const lateWords = (state: Pick<GarmentState, "minutesLate" | "daysLate" | "due">, staging: Staging): string => {
  const milestone = staging.milestones.find((each) => wallMinute(each.date, each.at) === state.due);
  const late = state.daysLate > 0 ? plural(state.daysLate, "working day") : showHours(state.minutesLate);
  return `${late} after ${milestone?.name.toLowerCase() ?? "its day"}`;
};
