import { ok, type Result } from "#lib/result";
import { type Unreadable, unreadable } from "#lib/units/unreadable";
import { dayNumber, plainDate } from "./days";
import { type DayMinute, MINUTES_PER_DAY, type PlainDate, type WallMinute } from "./plainDate";

/** Reads `09:30`, `9:30`, `9.30`, `9 am`, `1:15 pm` and `24:00` (the end of a day). */
export const readClock = (text: string): Result<DayMinute, Unreadable> => {
  const found = /^(\d{1,2})(?:[:.]([0-5]\d))?(?::00)? ?(am|pm)?$/i.exec(text.trim());
  const half = found?.[3]?.toLowerCase();
  const hour = Number(found?.[1]);
  const minute = Number(found?.[2] ?? 0);
  const bad = !found || (half ? hour < 1 || hour > 12 : found[2] === undefined || hour * 60 + minute > MINUTES_PER_DAY);
  if (bad) return unreadable(`"${text}" is not a time of day.`, "Write it like 09:30 or 14:15.");
  return ok((half ? (hour % 12) + (half === "pm" ? 12 : 0) : hour) * 60 + minute);
};

/** `09:30` */
export const showClock = (minute: DayMinute): string =>
  `${String(Math.floor(minute / 60)).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;

/** The minute of the wall clock at which a day's minute falls. */
export const wallMinute = (date: PlainDate, minute: DayMinute): WallMinute => dayNumber(date) * MINUTES_PER_DAY + minute;

/** Day and minute of the day of a minute of the wall clock. */
export const splitWall = (wall: WallMinute): { readonly date: PlainDate; readonly minute: DayMinute } => {
  const day = Math.floor(wall / MINUTES_PER_DAY);
  return { date: plainDate(day), minute: wall - day * MINUTES_PER_DAY };
};
