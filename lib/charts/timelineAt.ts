import type { DayMinute, PlainDate } from "#lib/calendar/plainDate";

/** What of a timeline's axis a hand must know to say which time a place on it means. */
export interface TimelineGrip {
  readonly days: readonly { readonly date: PlainDate; readonly x: number }[];
  readonly dayWidth: number;
  /** Hours a column stands for. */
  readonly from: DayMinute;
  readonly to: DayMinute;
}

/** Work is put down on quarter hours. */
const STEP = 15;

/** The day and minute that a place on the timeline stands for; outside the picture the nearest that is drawn. */
export const timelineAt = ({ days, dayWidth, from, to }: TimelineGrip, x: number): { readonly date: PlainDate; readonly at: DayMinute } => {
  const index = Math.max(
    0,
    days.findLastIndex((day) => day.x <= x),
  );
  const day = days[index]!;
  const part = Math.min(1, Math.max(0, (x - day.x) / dayWidth));
  const at = Math.round((from + part * (to - from)) / STEP) * STEP;
  return { date: day.date, at: Math.min(at, to - STEP) };
};
