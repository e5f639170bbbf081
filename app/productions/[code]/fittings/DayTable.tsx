import Link from "next/link";
import { showClock, splitWall } from "#lib/calendar/clock";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { Staging } from "#lib/staging/staging";
import { figures, Heads } from "../../../_components/Heads";
import { Wide } from "../../../_components/Wide";
import { Woven } from "../../../_components/Woven";
import { garmentHref } from "../../../_data/address";
import { nameOfMaker, nameOfPerformer } from "../../../_data/names";
import { showLongDay } from "../../../_data/showDates";
import { FittingState } from "./FittingState";
import styles from "./Fittings.module.css";
import type { SeenVisit } from "./fittingsView";
import { missingWords } from "./missingWords";

/** The calls of one day, a visit at a time. */
export const DayTable = ({
  date,
  visits,
  staging,
}: {
  readonly date: PlainDate;
  readonly visits: readonly SeenVisit[];
  readonly staging: Staging;
}) => {
  const { code } = staging.production;
  const isMinor = (performer: string) => staging.performers.some((one) => one.code === performer && one.minor);
  const roomOf = (room: string) => staging.machines.find((machine) => machine.code === room)?.name ?? room;
  return (
    <section className="part" aria-labelledby={`day-${date}`}>
      <header>
        <h2 id={`day-${date}`}>{showLongDay(date)}</h2>
        <span className="cap">{[...new Set(visits.map(({ room }) => roomOf(room)))].join(", ")}</span>
      </header>
      <Wide label={`Fittings of ${showLongDay(date)}`}>
        <table className={`stack ${styles.day}`}>
          <Heads of={["Time", "Dancer", "Fitting", "Garment", figures("Minutes"), "With", "Missing", "State"]} />
          <tbody>
            {visits.flatMap((visit) =>
              visit.fittings.map((fitting, at) => (
                <tr key={fitting.node} className={at > 0 ? styles.same : undefined}>
                  <td className={styles.time}>
                    <Link href={fitting.href} prefetch={false}>
                      {showClock(splitWall(fitting.start ?? visit.start).minute)}
                    </Link>
                  </td>
                  <td className="name b">
                    {nameOfPerformer(staging, visit.performer)}
                    {isMinor(visit.performer) && <span className="units"> minor: chaperone</span>}
                  </td>
                  <td>{fitting.name}</td>
                  <td>
                    <Woven number={fitting.garment} href={garmentHref(code, fitting.garment)} />
                  </td>
                  <td className="num" data-label="minutes">
                    {fitting.minutes}
                  </td>
                  <td data-label="with">{nameOfMaker(staging, visit.fitter)}</td>
                  <td className="q small">
                    {missingWords(fitting.missing).map((words) => (
                      <span key={words} className={styles.missing}>
                        {words}
                      </span>
                    ))}
                  </td>
                  <td>
                    <FittingState fitting={fitting} />
                  </td>
                </tr>
              )),
            )}
          </tbody>
        </table>
      </Wide>
    </section>
  );
};
