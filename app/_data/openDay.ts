import { dayNumber, weekdayOf } from "#lib/calendar/days";
import type { OpenDay } from "#lib/calendar/workingDays";
import type { Staging } from "#lib/staging/staging";

/** A day the workroom works: some maker has hours on that weekday and the whole room is not away. */
export const openDayOf = (staging: Staging): OpenDay => {
  const weekdays = new Set(staging.makers.flatMap((maker) => maker.hours.map((hours) => hours.weekday)));
  const closed = staging.absences
    .filter((absence) => absence.maker === null && absence.fromTime === null)
    .map((absence) => [dayNumber(absence.from), dayNumber(absence.to)] as const);
  return (day) => weekdays.has(weekdayOf(day)) && !closed.some(([from, to]) => from <= day && day <= to);
};
