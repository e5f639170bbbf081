import type { Minutes } from "#lib/units/quantities";

/** Whole hours, as tables of load show them: `1,658`. */
export const wholeHours = (minutes: Minutes): string => Math.round(minutes / 60).toLocaleString("en-GB");
