import Link from "next/link";
import { addDays } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { showDay } from "#lib/calendar/showDay";

/** From week to week, over weeks that have visits. */
export const WeekNav = ({
  href,
  week,
  weeks,
}: {
  readonly href: string;
  readonly week: PlainDate;
  readonly weeks: readonly PlainDate[];
}) => {
  const before = weeks.findLast((one) => one < week);
  const after = weeks.find((one) => one > week);
  const to = (one: PlainDate, words: string) => (
    <Link className="press second" href={`${href}?week=${one}`} prefetch={false}>
      {words} <span className="unseen">from {showDay(one)}</span>
    </Link>
  );
  return (
    <nav className="acts no-print" aria-label="Weeks" style={{ margin: 0 }}>
      {before && to(before, "Week before")}
      <b>
        {showDay(week)} to {showDay(addDays(week, 6))}
      </b>
      {after && to(after, "Week after")}
    </nav>
  );
};
