import { addDays } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { showDay } from "#lib/calendar/showDay";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { dayLines } from "./dayLines";

/** The next seven days, day by day. */
export const NextDays = ({ plan, today }: { readonly plan: StagingPlan; readonly today: PlainDate }) => {
  const days = dayLines(plan, today);
  if (days.length === 0)
    return (
      <p className="q">
        Nothing begins, is fitted or must be ordered from {showDay(today)} to {showDay(addDays(today, 6))}.
      </p>
    );
  return days.map(({ date, lines }) => (
    <div key={date}>
      <h3>{date === today ? `Today, ${showDay(date)}` : showDay(date)}</h3>
      <ul className="lines">
        {lines.map(({ who, what }) => (
          <li key={who} className="small">
            <b>{who}</b> {what}
          </li>
        ))}
      </ul>
    </div>
  ));
};
