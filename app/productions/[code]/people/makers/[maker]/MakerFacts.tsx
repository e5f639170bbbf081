import { showClock } from "#lib/calendar/clock";
import { WEEKDAYS } from "#lib/calendar/showDay";
import { SKILLS } from "#lib/labour/skills";
import type { Maker } from "#lib/labour/workroom";
import type { Staging } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import { showMoney } from "#lib/units/money";
import { words } from "#lib/words/words";
import { capital, listed } from "../../../../../_data/plural";

/** A maker in one sentence. */
export const MakerFacts = ({ maker, staging, money }: { readonly maker: Maker; readonly staging: Staging; readonly money: boolean }) => {
  const usage = words(staging.production.words);
  const week = maker.hours.reduce((minutes, { from, to }) => minutes + to - from, 0);
  const days = [...new Set(maker.hours.map(({ weekday }) => weekday))].toSorted();
  const first = Math.min(...maker.hours.map(({ from }) => from));
  const last = Math.max(...maker.hours.map(({ to }) => to));
  return (
    <p className="say">
      {capital(maker.trade)}, {usage.employment[maker.employment].toLowerCase()}.{" "}
      <b>{listed(SKILLS.filter((skill) => maker.skills[skill]).map((skill) => usage.skills[skill].toLowerCase()))}</b>;{" "}
      {days.length > 0
        ? `${showHours(week)} a week, ${listed(days.map((day) => WEEKDAYS[day - 1] ?? ""))} between ${showClock(first)} and ${showClock(last)}`
        : "no hours"}
      , {maker.productive / 10}% of them for tasks.
      {money && (
        // Not for the wall.
        <span className="no-print">
          {" "}
          An hour costs {showMoney(maker.costPerHour, staging.production.currency)}, one of overtime{" "}
          {showMoney(maker.overtimeCostPerHour, staging.production.currency)}.
        </span>
      )}
    </p>
  );
};
