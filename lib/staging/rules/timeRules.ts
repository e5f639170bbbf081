import type { WeekHours } from "#lib/labour/workroom";
import { faultIn, type Rule } from "./rule";

const overlap = (hours: readonly WeekHours[], overtime: readonly WeekHours[]): boolean =>
  hours.some((one) => overtime.some((other) => one.weekday === other.weekday && one.from < other.to && other.from < one.to));

/** First and last days in order, overtime beside the hours, paces in order of days. */
export const makerRules: Rule = ({ makers }) =>
  makers.flatMap(({ row, values: { starts, ends, hours, overtime } }) => {
    if (starts && ends && ends < starts) return [faultIn("makers.csv", row, "ends", "The last day is before the first.", "Exchange them.")];
    return hours && overtime && overlap(hours, overtime)
      ? [faultIn("makers.csv", row, "overtime", "Overtime lies within the working hours.", "Write only the hours beyond them.")]
      : [];
  });

export const absenceRules: Rule = ({ absences }) =>
  absences.flatMap(({ row, values: { from, to, fromTime, toTime } }) => {
    if (from && to && to < from) return [faultIn("absences.csv", row, "to", "The last day is before the first.", "Exchange them.")];
    if (fromTime === undefined || toTime === undefined) return [];
    if ((fromTime === null) !== (toTime === null))
      return [
        faultIn(
          "absences.csv",
          row,
          fromTime === null ? "from_time" : "to_time",
          "One of the two times is missing.",
          "Write both, or neither for whole days.",
        ),
      ];
    return fromTime !== null && toTime !== null && toTime <= fromTime
      ? [faultIn("absences.csv", row, "to_time", "It ends before it begins.", "Exchange the times.")]
      : [];
  });

export const callRules: Rule = ({ calls }) =>
  calls.flatMap(({ row, values: { from, to } }) =>
    from !== undefined && to !== undefined && to <= from
      ? [faultIn("calls.csv", row, "to", "It ends before it begins.", "Exchange the times.")]
      : [],
  );
