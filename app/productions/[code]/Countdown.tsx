import { dayNumber } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { workingDaysAfter } from "#lib/calendar/workingDays";
import type { Staging } from "#lib/staging/staging";
import { openDayOf } from "../../_data/openDay";
import { plural } from "../../_data/plural";
import { showLongDay } from "../../_data/showDates";

/** Working days left to the opening, today not counted, in playbill letters. */
export const Countdown = ({ staging, today }: { readonly staging: Staging; readonly today: PlainDate }) => {
  const opening = staging.milestones.find((milestone) => milestone.kind === "opening");
  if (!opening) return <h1>{staging.production.title}</h1>;
  const days = workingDaysAfter(dayNumber(today), dayNumber(opening.date), openDayOf(staging));
  return (
    <div>
      <h1 className="count">{opening.date < today ? "Opened" : plural(days, "working day")}</h1>
      <p className="q">
        {opening.date < today ? "on" : "to opening,"} {showLongDay(opening.date)}
      </p>
    </div>
  );
};
