import { showClock, splitWall } from "#lib/calendar/clock";
import type { PlainDate } from "#lib/calendar/plainDate";
import { showDate } from "#lib/calendar/showDay";
import { COME_WITH } from "#lib/fittings/comeWith";
import type { Staging } from "#lib/staging/staging";
import { Wide } from "../../../../_components/Wide";
import { nameOfMaker, nameOfPerformer, nameOfRole } from "../../../../_data/names";
import { listed, plural } from "../../../../_data/plural";
import { showLongDay } from "../../../../_data/showDates";
import type { SeenFitting, SeenVisit } from "../fittingsView";
import { MinorsCaution } from "../MinorsCaution";
import styles from "./Calls.module.css";

const unique = <T,>(all: readonly T[]): readonly T[] => [...new Set(all)];

/** The calls of one day on one sheet, with room to write at the door. No measurement stands on it. */
export const CallSheet = ({
  date,
  visits,
  unplaced,
  staging,
  today,
}: {
  readonly date: PlainDate;
  readonly visits: readonly SeenVisit[];
  /** Those of the whole plan without a time: of the performers called, they are named. */
  readonly unplaced: readonly SeenFitting[];
  readonly staging: Staging;
  readonly today: PlainDate;
}) => {
  const called = unique(visits.map(({ performer }) => performer));
  const rooms = unique(visits.map(({ room }) => staging.machines.find(({ code }) => code === room)?.name ?? room));
  const open = unplaced.filter(({ performer }) => called.includes(performer));
  const minutes = visits.reduce((sum, { start, end }) => sum + end - start, 0);
  return (
    <article className={styles.sheet} aria-label={`Fitting calls of ${showLongDay(date)}`}>
      <header>
        <div>
          <h2>Fitting calls</h2>
          <p className={styles.date}>{showLongDay(date)}</p>
        </div>
        <p>
          <b>{staging.production.title}</b>
          <br />
          {rooms.join(", ")}
          <br />
          {unique(visits.map(({ fitter }) => nameOfMaker(staging, fitter))).join(", ")}
        </p>
      </header>
      <Wide label={`Calls of ${showLongDay(date)}`}>
        <table>
          <thead>
            <tr>
              {["Time", "Dancer", "Fitting", "Garments", "Minutes", "Come with", "Seen"].map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {visits.map((visit) => (
              <tr key={visit.visit}>
                <td className={styles.time}>{showClock(splitWall(visit.start).minute)}</td>
                <td>
                  <b>{nameOfPerformer(staging, visit.performer)}</b>
                  <span className={styles.small}>{rolesOf(visit.performer, staging)}</span>
                </td>
                <td>{unique(visit.fittings.map(({ name }) => name)).join("; ")}</td>
                <td>
                  {unique(visit.fittings.map(({ garment }) => garment)).map((number) => (
                    <span key={number} className={styles.number}>
                      {number}
                    </span>
                  ))}
                </td>
                <td className="num">{visit.end - visit.start}</td>
                <td>{unique(visit.fittings.flatMap(({ kind }) => COME_WITH[kind].split(/[,;] /))).join(", ")}</td>
                <td className={styles.write} />
              </tr>
            ))}
          </tbody>
        </table>
      </Wide>
      <div className={styles.told}>
        <p>
          <b>For company management.</b> {plural(called.length, "dancer")}, {minutes} minutes in all, inside the work span and clear of
          class, calls and rests as they stood when the workroom was levelled. Confirm two days ahead.
        </p>
        {open.length > 0 && (
          <p>
            <b>Not placed.</b>{" "}
            {listed(open.map((one) => `${nameOfPerformer(staging, one.performer)}, ${one.name.toLowerCase()} of ${one.garment}`))}.
          </p>
        )}
      </div>
      <MinorsCaution performers={called} staging={staging} />
      <div className={styles.noted}>
        <span>Noted at the door</span>
        <i />
        <i />
        <i />
        <i />
      </div>
      <footer>
        <span>To: company board, stage management, workroom door</span>
        <span>Printed {showDate(today)}</span>
      </footer>
    </article>
  );
};

/** What somebody dances, as a call sheet says it: `Snowflakes 2; The Lark, stands by`. */
const rolesOf = (performer: string, staging: Staging): string =>
  unique(
    staging.casting
      .filter((place) => place.performer === performer)
      .map(({ role, place, standing }) => {
        const many = (staging.roles.find(({ code }) => code === role)?.places ?? 1) > 1;
        return `${nameOfRole(staging, role)}${many ? ` ${place}` : ""}${standing === "cover" ? ", stands by" : ""}`;
      }),
  ).join("; ");
