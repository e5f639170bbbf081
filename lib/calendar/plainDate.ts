/** A calendar day as `YYYY-MM-DD`. Never a `Date`: a day has no time zone. */
export type PlainDate = string & { readonly __brand: "PlainDate" };
/** Days since 1970-01-01: the integer form of a `PlainDate`, for arithmetic. */
export type DayNumber = number;
/** Minute of the workroom's local wall clock: `DayNumber` x 1440 + minute of the day. */
export type WallMinute = number;
/** Minute of a day, 0 to 1440. */
export type DayMinute = number;

export const MINUTES_PER_DAY = 1440;
