import { showClock, splitWall } from "./clock";
import { civilOf, dayNumber, weekdayOf } from "./days";
import type { PlainDate, WallMinute } from "./plainDate";

export const WEEKDAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"] as const;
const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;

/** `Tue 9 Mar` */
export const showDay = (date: PlainDate): string => {
  const day = dayNumber(date);
  const civil = civilOf(day);
  return `${WEEKDAYS[weekdayOf(day) - 1]} ${civil.day} ${MONTHS[civil.month - 1]}`;
};

/** `Tue 9 Mar 2027` */
export const showDate = (date: PlainDate): string => `${showDay(date)} ${date.slice(0, 4)}`;

/** `Thu 15 Apr 12:45` */
export const showWall = (wall: WallMinute): string => {
  const { date, minute } = splitWall(wall);
  return `${showDay(date)} ${showClock(minute)}`;
};
