import { dayNumber, plainDate, weekdayOf } from "#lib/calendar/days";
import { MINUTES_PER_DAY, type PlainDate, type WallMinute } from "#lib/calendar/plainDate";

const WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];
const MONTHS = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

/** `Saturday 24 April 2027`, for headings. */
export const showLongDay = (date: PlainDate): string =>
  `${WEEKDAYS[weekdayOf(dayNumber(date)) - 1]} ${Number(date.slice(8))} ${MONTHS[Number(date.slice(5, 7)) - 1]} ${date.slice(0, 4)}`;

/** The day a minute of the wall clock is in; midnight ends the day before. */
export const dayOfFinish = (wall: WallMinute): PlainDate => plainDate(Math.floor((wall - 1) / MINUTES_PER_DAY));

/** The day a minute of the wall clock is in. */
export const dayOfWall = (wall: WallMinute): PlainDate => plainDate(Math.floor(wall / MINUTES_PER_DAY));

/** A moment as the workroom's wall clock shows it: `Tue 9 Mar, 08:10`. */
export const showInstant = (instant: Date, zone: string): string =>
  new Intl.DateTimeFormat("en-GB", {
    weekday: "short",
    day: "numeric",
    month: "short",
    hour: "2-digit",
    minute: "2-digit",
    timeZone: zone,
  }).format(instant);
