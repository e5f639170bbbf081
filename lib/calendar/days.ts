import type { DayNumber, PlainDate } from "./plainDate";

/** Weekdays count from 1, Monday, to 7, Sunday. */
export type Weekday = number;

const ISO = /^(\d{4})-(\d{2})-(\d{2})$/;

/**
 * Day number of a year, month and day of the proleptic Gregorian calendar, by integers alone: years begin in March, so that the leap
 * day is the last one (the usual days-from-civil arithmetic).
 */
export const dayOf = (year: number, month: number, day: number): DayNumber => {
  const shifted = month <= 2 ? year - 1 : year;
  const era = Math.floor(shifted / 400);
  const yearOfEra = shifted - era * 400;
  const dayOfYear = Math.floor((153 * (month > 2 ? month - 3 : month + 9) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146097 + dayOfEra - 719468;
};

/** Year, month and day of a day number. */
export const civilOf = (day: DayNumber): { readonly year: number; readonly month: number; readonly day: number } => {
  const shifted = day + 719468;
  const era = Math.floor(shifted / 146097);
  const dayOfEra = shifted - era * 146097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36524) - Math.floor(dayOfEra / 146096)) / 365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const fromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const month = fromMarch < 10 ? fromMarch + 3 : fromMarch - 9;
  return { year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0), month, day: dayOfYear - Math.floor((153 * fromMarch + 2) / 5) + 1 };
};

const padded = (value: number, width: number): string => String(value).padStart(width, "0");

/** The calendar day of a day number, for the years 0001 to 9999. */
export const plainDate = (day: DayNumber): PlainDate => {
  const { year, month, day: dayOfMonth } = civilOf(day);
  return `${padded(year, 4)}-${padded(month, 2)}-${padded(dayOfMonth, 2)}` as PlainDate;
};

/** The day if there is such a day (no 30 February), else null. */
export const dateOf = (year: number, month: number, day: number): PlainDate | null => {
  if (year < 1 || year > 9999 || month < 1 || month > 12 || day < 1) return null;
  const date = plainDate(dayOf(year, month, day));
  return date === `${padded(year, 4)}-${padded(month, 2)}-${padded(day, 2)}` ? date : null;
};

/** The text as a `PlainDate` when it is exactly `YYYY-MM-DD` and there is such a day, else null. */
export const isoDate = (text: string): PlainDate | null => {
  const found = ISO.exec(text);
  return found ? dateOf(Number(found[1]), Number(found[2]), Number(found[3])) : null;
};

/** Day number of a calendar day. */
export const dayNumber = (date: PlainDate): DayNumber =>
  dayOf(Number(date.slice(0, 4)), Number(date.slice(5, 7)), Number(date.slice(8, 10)));

export const weekdayOf = (day: DayNumber): Weekday => ((((day + 3) % 7) + 7) % 7) + 1;

/** Monday of the week the day is in. */
export const mondayOf = (day: DayNumber): DayNumber => day - weekdayOf(day) + 1;

export const addDays = (date: PlainDate, days: number): PlainDate => plainDate(dayNumber(date) + days);
