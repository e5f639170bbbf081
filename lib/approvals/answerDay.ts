import { dayNumber } from "#lib/calendar/days";
import type { DayNumber } from "#lib/calendar/plainDate";
import { addWorkingDays, type OpenDay } from "#lib/calendar/workingDays";
import type { OpenApproval } from "./openApprovals";

/**
 * The day by whose end the answer is promised or, when everything is there to be looked at, due after the working days of the look. Null when it
 * only follows from when the prototype or the samples are made.
 */
export const answerDay = (approval: OpenApproval, today: DayNumber, isOpen: OpenDay): DayNumber | null => {
  const { expectedOn, askedOn, days, prototype, samples } = approval;
  if (expectedOn !== null) return dayNumber(expectedOn);
  if (prototype !== null || samples.length > 0) return null;
  const asked = askedOn === null ? today : dayNumber(askedOn);
  return addWorkingDays(asked, days, isOpen) ?? asked + days;
};
