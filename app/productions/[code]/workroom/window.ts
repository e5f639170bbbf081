import { dayNumber, isoDate, mondayOf, plainDate } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { dayOfFinish, dayOfWall } from "../../../_data/showDates";

/** How much is drawn at once; the whole plan as `all`. */
export const ZOOMS = ["week", "fortnight", "six weeks", "all"] as const;
export type Zoom = (typeof ZOOMS)[number];
const WEEKS: Readonly<Record<Zoom, number>> = { week: 1, fortnight: 2, "six weeks": 6, all: Number.POSITIVE_INFINITY };

/** The weeks of the plan that are drawn, and where the next ones are. */
export interface Window {
  readonly from: PlainDate;
  readonly to: PlainDate;
  /** Mondays to go to; null where there is no more work. */
  readonly earlier: PlainDate | null;
  readonly later: PlainDate | null;
  readonly zoom: Zoom;
}

/** As many weeks as asked for, six unasked, from the Monday asked for; unasked, from the first work that is not over. */
export const windowOf = (
  plan: Pick<StagingPlan, "tasks" | "fittings">,
  today: PlainDate,
  asked: string | undefined,
  zoomAsked?: string,
): Window => {
  const zoom = ZOOMS.find((one) => one === zoomAsked) ?? "six weeks";
  const days = WEEKS[zoom] * 7;
  const placed = [...plan.tasks, ...plan.fittings].flatMap(({ start, end }) => (start === null || end === null ? [] : [{ start, end }]));
  const day = dayNumber(today);
  const first = mondayOf(placed.length > 0 ? Math.min(...placed.map(({ start }) => dayNumber(dayOfWall(start)))) : day);
  const last = placed.length > 0 ? Math.max(...placed.map(({ end }) => dayNumber(dayOfFinish(end)))) : day;
  const date = isoDate(asked ?? "");
  const wished = mondayOf(date ? dayNumber(date) : day);
  const from = zoom === "all" ? first : Math.min(Math.max(wished, first), mondayOf(last));
  const next = from + days;
  return {
    from: plainDate(from),
    to: plainDate(Math.min(last, next - 1)),
    earlier: first < from ? plainDate(Math.max(first, from - days)) : null,
    later: next <= last ? plainDate(next) : null,
    zoom,
  };
};
