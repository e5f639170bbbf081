import { readClock, showClock } from "#lib/calendar/clock";
import type { DayMinute, PlainDate } from "#lib/calendar/plainDate";
import { readDate } from "#lib/calendar/readDate";
import { readWeekHours, showWeekHours } from "#lib/calendar/weekHours";
import type { WeekHours } from "#lib/labour/workroom";
import { type Cell, cell } from "./cell";

export const day = (): Cell<PlainDate> => cell(readDate, (date) => date);

export const clock = (): Cell<DayMinute> => cell(readClock, showClock);

export const weekHours = (): Cell<readonly WeekHours[]> => cell(readWeekHours, showWeekHours);
