import type { PlainDate } from "#lib/calendar/plainDate";

/** A database day as a day: the driver gives its midnight in UTC. */
export const plainDate = (date: Date): PlainDate => date.toISOString().slice(0, 10) as PlainDate;

export const plainDateOrNull = (date: Date | null): PlainDate | null => date && plainDate(date);

/** The other way round, for a query. */
export const databaseDate = (date: PlainDate): Date => new Date(`${date}T00:00:00Z`);
