import type { PlainDate } from "#lib/calendar/plainDate";
import { showDay } from "#lib/calendar/showDay";
import { Woven } from "../../../../../_components/Woven";
import styles from "./MakerDay.module.css";
import type { DayPart } from "./makerDay";

/** The whole week in few words, for the wall. */
export const WeekList = ({ days }: { readonly days: readonly { readonly date: PlainDate; readonly parts: readonly DayPart[] }[] }) => (
  <section className="part" aria-labelledby="week">
    <header>
      <h2 id="week">The week</h2>
    </header>
    {days
      .filter(({ parts }) => parts.length > 0)
      .map(({ date, parts }) => (
        <div key={date} className={styles.ofWeek}>
          <h3>{showDay(date)}</h3>
          <ul className="lines">
            {parts.map((part) => (
              <li key={`${part.start} ${part.key}`} className="small">
                <span className="q">
                  {part.from} to {part.to}
                </span>{" "}
                {part.name}{" "}
                {part.garments.map((number) => (
                  <Woven key={number} number={number} />
                ))}
              </li>
            ))}
          </ul>
        </div>
      ))}
  </section>
);
