import { dayNumber, plainDate, weekdayOf } from "#lib/calendar/days";
import type { DayNumber, PlainDate } from "#lib/calendar/plainDate";
import type { Staging } from "./staging";

/**
 * The same staging some whole weeks later or earlier, so that its first week begins on the Monday on or after `today`. Weekdays
 * stay, and so does everything between two of its dates.
 */
export function shiftDates(staging: Staging, today: PlainDate): Staging {
  const starts = dayNumber(staging.production.starts);
  const days = mondayAfter(dayNumber(today)) - mondayBefore(starts);
  const moved = (date: PlainDate): PlainDate => plainDate(dayNumber(date) + days);
  const movedOrNull = (date: PlainDate | null): PlainDate | null => date && moved(date);
  return {
    ...staging,
    production: { ...staging.production, starts: moved(staging.production.starts) },
    milestones: staging.milestones.map((milestone) => ({ ...milestone, date: moved(milestone.date) })),
    measurements: staging.measurements.map((sheet) => ({ ...sheet, taken: moved(sheet.taken) })),
    sets: staging.sets.map((set) => ({ ...set, approvedOn: movedOrNull(set.approvedOn) })),
    makers: staging.makers.map((maker) => ({
      ...maker,
      starts: movedOrNull(maker.starts),
      ends: movedOrNull(maker.ends),
      paceFrom: maker.paceFrom.map((pace) => ({ ...pace, date: moved(pace.date) })),
    })),
    absences: staging.absences.map((absence) => ({ ...absence, from: moved(absence.from), to: moved(absence.to) })),
    calls: staging.calls.map((call) => ({ ...call, date: moved(call.date) })),
    lots: staging.lots.map((lot) => ({ ...lot, arrives: movedOrNull(lot.arrives) })),
    approvals: staging.approvals.map((approval) => ({
      ...approval,
      askedOn: movedOrNull(approval.askedOn),
      expectedOn: movedOrNull(approval.expectedOn),
      approvedOn: movedOrNull(approval.approvedOn),
    })),
    otherWork: staging.otherWork.map((task) => ({ ...task, askedOn: movedOrNull(task.askedOn), doneOn: movedOrNull(task.doneOn) })),
  };
}

const mondayBefore = (day: DayNumber): DayNumber => day - (weekdayOf(day) - 1);

const mondayAfter = (day: DayNumber): DayNumber => mondayBefore(day + 6);
