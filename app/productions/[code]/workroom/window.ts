import { dayNumber, isoDate, mondayOf, plainDate } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { dayOfFinish, dayOfWall } from "../../../_data/showDates";

const DAYS = 6 * 7;

/** The weeks of the plan that are drawn, and where the next ones are. */
export interface Window {
  readonly from: PlainDate;
  readonly to: PlainDate;
  /** Mondays to go to; null where there is no more work. */
  readonly earlier: PlainDate | null;
  readonly later: PlainDate | null;
}

/** Six weeks from the Monday asked for; unasked, from the first work that is not over. */
export const windowOf = (plan: Pick<StagingPlan, "tasks" | "fittings">, today: PlainDate, asked: string | undefined): Window => {
  const placed = [...plan.tasks, ...plan.fittings].flatMap(({ start, end }) => (start === null || end === null ? [] : [{ start, end }]));
  const day = dayNumber(today);
  const first = mondayOf(placed.length > 0 ? Math.min(...placed.map(({ start }) => dayNumber(dayOfWall(start)))) : day);
  const last = placed.length > 0 ? Math.max(...placed.map(({ end }) => dayNumber(dayOfFinish(end)))) : day;
  const date = isoDate(asked ?? "");
  const wished = mondayOf(date ? dayNumber(date) : day);
  const from = Math.min(Math.max(wished, first), mondayOf(last));
  const next = from + DAYS;
  return {
    from: plainDate(from),
    to: plainDate(Math.min(last, next - 1)),
    earlier: first < from ? plainDate(Math.max(first, from - DAYS)) : null,
    later: next <= last ? plainDate(next) : null,
  };
};
