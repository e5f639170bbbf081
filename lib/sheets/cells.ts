import { showClock, splitWall } from "#lib/calendar/clock";
import type { WallMinute } from "#lib/calendar/plainDate";

/** `2027-02-09 14:30`: sorts as text, and spreadsheets read it as a time. Empty for none. */
export const timeCell = (wall: WallMinute | null): string => {
  if (wall === null) return "";
  const { date, minute } = splitWall(wall);
  return `${date} ${showClock(minute)}`;
};

/** Several in one cell. */
export const listCell = (items: readonly string[]): string => items.join("; ");
