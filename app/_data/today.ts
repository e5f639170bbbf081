import { Temporal } from "temporal-polyfill";
import { isoDate } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";

/** The day it is in the workroom. TARLATAN_TODAY holds it still, for the demonstration and the tests. */
export const todayIn = (zone: string): PlainDate => {
  const held = isoDate(process.env.TARLATAN_TODAY ?? "");
  if (held) return held;
  const today = isoDate(Temporal.Now.plainDateISO(zone).toString());
  if (!today) throw new Error("The clock of this machine lies outside the years 0001 to 9999");
  return today;
};
