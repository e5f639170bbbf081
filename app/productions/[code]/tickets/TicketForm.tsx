import { addDays, dayNumber, mondayOf, plainDate } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { showDay } from "#lib/calendar/showDay";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { dayOfWall } from "../../../_data/showDates";
import { writeQuery } from "../garments/garmentQuery";
import styles from "./Tickets.module.css";
import type { TicketQuery } from "./ticketQuery";

/** Weeks in which any planned task begins. */
const weeksOf = (plan: StagingPlan): readonly PlainDate[] =>
  [...new Set(plan.tasks.flatMap(({ start }) => (start === null ? [] : plainDate(mondayOf(dayNumber(dayOfWall(start)))))))].sort();

/** Which tickets: by what is searched, by whose they are, by the week they begin in. */
export const TicketForm = ({ plan, query }: { readonly plan: StagingPlan | null; readonly query: TicketQuery }) => (
  <form method="get" className={`${styles.form} no-print`}>
    {query.numbers.map((number) => (
      <input key={number} type="hidden" name="number" value={number} />
    ))}
    {query.numbers.length === 0 && (
      <>
        {[...new URLSearchParams(writeQuery({ ...query.list, find: "", page: 1 }))].map(([name, value]) => (
          <input key={name} type="hidden" name={name} value={value} />
        ))}
        <label>
          Find
          <input type="search" name="find" placeholder="garment, role, wearer" defaultValue={query.list.find} />
        </label>
        <input type="hidden" name="all" value="1" />
      </>
    )}
    {plan && (
      <>
        <label>
          Maker
          <select name="maker" defaultValue={query.maker}>
            <option value="">everybody</option>
            {plan.staging.makers.map((maker) => (
              <option key={maker.code} value={maker.code}>
                {maker.name}
              </option>
            ))}
          </select>
        </label>
        <label>
          Begun in the week
          <select name="week" defaultValue={query.week ?? ""}>
            <option value="">any</option>
            {weeksOf(plan).map((week) => (
              <option key={week} value={week}>
                {showDay(week)} to {showDay(addDays(week, 6))}
              </option>
            ))}
          </select>
        </label>
      </>
    )}
    <button type="submit" className="press second">
      Show the tickets
    </button>
  </form>
);
