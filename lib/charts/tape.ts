import { addDays, dayNumber, weekdayOf } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { showDay } from "#lib/calendar/showDay";
import type { OpenDay } from "#lib/calendar/workingDays";
import { type LabelledPin, pinLabels } from "./tapeLabels";

export interface TapeMilestone {
  readonly name: string;
  readonly date: PlainDate;
}

/** One unit of the tape: a working day. */
export interface TapeDay {
  readonly date: PlainDate;
  /** Working days from it to opening. */
  readonly left: number;
  readonly x: number;
  /** First working day of its week: a long tick, and a Monday unless that is closed. */
  readonly startsWeek: boolean;
  /** Whether its figure has room. */
  readonly figure: boolean;
}

export interface TapePin extends TapeMilestone, LabelledPin {
  /** Working days from today. */
  readonly days: number;
}

export interface Tape {
  /** Width of a unit. */
  readonly unit: number;
  /** Today (or the next working day) first, opening last. */
  readonly days: readonly TapeDay[];
  readonly pins: readonly TapePin[];
}

export interface TapeSize {
  readonly width: number;
  /** Size of the letters of a name. */
  readonly letters: number;
}

const LEAST_FIGURE = 20;

/**
 * The tape: working days from today, counted down to opening, one unit each. Opening has a unit of its own even on a day when the workroom
 * is closed. A milestone on a closed day is pinned where the next unit begins. Empty once the production has opened.
 */
export const tape = (today: PlainDate, opening: PlainDate, isOpen: OpenDay, milestones: readonly TapeMilestone[], size: TapeSize): Tape => {
  if (opening < today) return { unit: 0, days: [], pins: [] };
  const dates: PlainDate[] = [];
  for (let date = today; date < opening; date = addDays(date, 1)) if (isOpen(dayNumber(date))) dates.push(date);
  dates.push(opening);
  const unit = size.width / dates.length;
  const weekOf = (date: PlainDate) => dayNumber(date) - weekdayOf(dayNumber(date));
  const days = dates.map((date, at): TapeDay => {
    const startsWeek = at > 0 && weekOf(date) !== weekOf(dates[at - 1]!);
    return { date, left: dates.length - 1 - at, x: at * unit, startsWeek, figure: unit >= LEAST_FIGURE || startsWeek };
  });
  const seen = milestones
    .filter(({ date }) => date >= today && date <= opening)
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  const pins = seen.map((milestone) => {
    const at = dates.findIndex((date) => date >= milestone.date);
    const x = dates[at] === milestone.date ? (at + 0.5) * unit : at * unit;
    return { ...milestone, days: at, small: smallOf(milestone.date, at), x };
  });
  return { unit, days, pins: pinLabels(pins, size.width, size.letters) };
};

const smallOf = (date: PlainDate, days: number): string =>
  days === 0 ? showDay(date) : `${showDay(date)}, ${days} ${days === 1 ? "day" : "days"}`;
