import type { DayNumber } from "./plainDate";

/** Whether anybody works on that day. */
export type OpenDay = (day: DayNumber) => boolean;

/** Far enough for any season; a calendar with no open day at all ends here. */
const FURTHEST = 3660;

/** Working days after `from` up to and including `to`; 0 when `to` is not after `from`. */
export const workingDaysAfter = (from: DayNumber, to: DayNumber, isOpen: OpenDay): number => {
  let count = 0;
  for (let day = from + 1; day <= to; day++) if (isOpen(day)) count++;
  return count;
};

/** The day `count` working days after `from` (before it when negative); `from` itself for 0. Null when none is open within ten years. */
export const addWorkingDays = (from: DayNumber, count: number, isOpen: OpenDay): DayNumber | null => {
  const step = count < 0 ? -1 : 1;
  let left = Math.abs(count);
  for (let day = from, walked = 0; walked <= FURTHEST; walked++) {
    if (left === 0) return day;
    day += step;
    if (isOpen(day)) left--;
  }
  return null;
};
