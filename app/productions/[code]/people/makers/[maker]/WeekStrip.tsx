import Link from "next/link";
import { addDays } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { showDay } from "#lib/calendar/showDay";
import { showHours } from "#lib/units/hours";
import type { Minutes } from "#lib/units/quantities";
import styles from "./MakerDay.module.css";

/** The week: each day with the hours it holds. */
export const WeekStrip = ({
  href,
  day,
  today,
  days,
}: {
  readonly href: string;
  readonly day: PlainDate;
  readonly today: PlainDate;
  readonly days: readonly { readonly date: PlainDate; readonly minutes: Minutes }[];
}) => (
  <nav aria-label="Week" className={styles.week}>
    <Link href={`${href}?day=${addDays(days[0]!.date, -7)}`} prefetch={false} className="no-print" aria-label="The week before">
      &lsaquo;
    </Link>
    {days.map(({ date, minutes }) => (
      <Link key={date} href={`${href}?day=${date}`} prefetch={false} aria-current={date === day ? "date" : undefined}>
        {showDay(date)}
        {date === today && <span className="units"> today</span>}
        <b>{minutes === 0 ? "nothing" : showHours(minutes)}</b>
      </Link>
    ))}
    <Link href={`${href}?day=${addDays(days[0]!.date, 7)}`} prefetch={false} className="no-print" aria-label="The week after">
      &rsaquo;
    </Link>
  </nav>
);
