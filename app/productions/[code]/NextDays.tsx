import { showClock, splitWall } from "#lib/calendar/clock";
import { addDays } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { showDay } from "#lib/calendar/showDay";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { showHours } from "#lib/units/hours";
import { nameOfMaker, nameOfPerformer } from "../../_data/names";

interface Entry {
  readonly date: PlainDate;
  readonly order: number;
  readonly text: string;
  readonly who: string;
}

/** What begins, is fitted or must be ordered in the seven days from `today`. */
const entriesOf = (plan: StagingPlan, today: PlainDate): readonly Entry[] => {
  const { staging } = plan;
  const last = addDays(today, 6);
  const tasks = plan.tasks.flatMap((task): Entry[] => {
    if (task.start === null) return [];
    const { date, minute } = splitWall(task.start);
    const who = `${task.garments.join(", ")} ${nameOfMaker(staging, task.maker)}, ${showHours(task.minutes)}`;
    return [{ date, order: minute, text: task.name, who }];
  });
  const fittings = plan.fittings.flatMap((fitting): Entry[] => {
    if (fitting.start === null) return [];
    const { date, minute } = splitWall(fitting.start);
    return [
      {
        date,
        order: minute,
        text: `${showClock(minute)} ${fitting.name}, ${nameOfPerformer(staging, fitting.performer)}`,
        who: fitting.garment,
      },
    ];
  });
  const orders = plan.purchase.lines.flatMap((line): Entry[] =>
    line.orderBy === null ? [] : [{ date: line.orderBy, order: -1, text: `Order by today: ${line.name}`, who: line.supplier }],
  );
  return [...orders, ...tasks, ...fittings].filter((entry) => today <= entry.date && entry.date <= last);
};

/** The next seven days, day by day. */
export const NextDays = ({ plan, today }: { readonly plan: StagingPlan; readonly today: PlainDate }) => {
  const entries = entriesOf(plan, today).toSorted(
    (a, b) => a.date.localeCompare(b.date) || a.order - b.order || a.who.localeCompare(b.who),
  );
  const days = [...new Set(entries.map((entry) => entry.date))];
  if (days.length === 0)
    return (
      <p className="q">
        Nothing begins, is fitted or must be ordered from {showDay(today)} to {showDay(addDays(today, 6))}.
      </p>
    );
  return (
    <table>
      <thead className="unseen">
        <tr>
          <th scope="col">Day</th>
          <th scope="col">What</th>
        </tr>
      </thead>
      <tbody>
        {days.map((day) => (
          <tr key={day}>
            <th scope="row" className="nb">
              {day === today ? `Today, ${showDay(day)}` : showDay(day)}
            </th>
            <td>
              <ul>
                {entries
                  .filter((entry) => entry.date === day)
                  .map((entry) => (
                    <li key={`${entry.text} ${entry.who}`}>
                      {entry.text} <span className="units">{entry.who}</span>
                    </li>
                  ))}
              </ul>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
};
