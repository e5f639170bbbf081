import type { PlainDate } from "#lib/calendar/plainDate";
import { showDate, showWall } from "#lib/calendar/showDay";
import type { Ticket } from "#lib/sheets/ticket";
import type { Staging } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import { showLength } from "#lib/units/showLength";
import { words as wordsOf } from "#lib/words/words";
import { SquareCode } from "../../../_components/SquareCode";
import { nameOfMaker, nameOfPerformer, nameOfRole } from "../../../_data/names";
import { wearerName } from "../../../_data/wearers";
import styles from "./Tickets.module.css";
import { TicketTasks } from "./TicketTasks";

/** One ticket: half a sheet of A4 or Letter. */
export const TicketPaper = ({
  ticket,
  staging,
  address,
  today,
}: {
  readonly ticket: Ticket;
  readonly staging: Staging;
  /** Of the garment's page. */
  readonly address: string;
  readonly today: PlainDate;
}) => {
  const { garment, lines, due } = ticket;
  const words = wordsOf(staging.production.words);
  const skills = [...new Set(lines.map(({ skill }) => words.skills[skill]))];
  const [first, ...others] = garment.wearers;
  const whose = (performer: string) => (performer === first?.performer ? "" : `, ${nameOfPerformer(staging, performer)}`);
  return (
    <article className={styles.ticket} aria-label={`${words.trade.ticket} of ${garment.number}`}>
      <header>
        <span className={styles.number}>{garment.number}</span>
        <div className={styles.title}>
          <h2>{garment.name}</h2>
          <p>
            {nameOfRole(staging, garment.role)}. {skills.join(", ")}
            {ticket.sheets > 1 && `. Sheet ${ticket.sheet} of ${ticket.sheets}`}
          </p>
        </div>
        <SquareCode address={address} label={`Square code of the page of ${garment.number}`} />
      </header>
      <div className={styles.about}>
        <div>
          <p>
            <b>For</b> {first ? wearerName(first, staging) : "nobody cast yet"}
            {others.length > 0 && `; also ${others.map((wearer) => wearerName(wearer, staging)).join(", ")}`}
          </p>
          {ticket.body.length > 0 && (
            <dl className={styles.body}>
              {ticket.body.map(([measurement, length]) => (
                <div key={measurement}>
                  <dt>{words.measurements[measurement].split(",")[0]}</dt>
                  <dd className="fr">{showLength(length, staging.production.lengths)}</dd>
                </div>
              ))}
            </dl>
          )}
        </div>
        {ticket.fittings.length > 0 && (
          <ul aria-label="Fittings">
            {ticket.fittings.map(({ name, performer, start }) => (
              <li key={`${name} ${performer}`}>
                <b>{start === null ? "no time yet" : showWall(start)}</b> {name.toLowerCase()}
                {whose(performer)}
              </li>
            ))}
          </ul>
        )}
      </div>
      <TicketTasks lines={lines} makerOf={(code) => (code === null ? "" : nameOfMaker(staging, code))} hours={showHours} />
      {ticket.cautions.length > 0 && (
        <p className={styles.care}>
          <b>Take care</b> {ticket.cautions.join(" ")}
        </p>
      )}
      <div className={styles.noted}>
        <span>Noted</span>
        <i />
        <i />
      </div>
      <footer>
        <span>
          {staging.production.title}
          {due && `, ${due.name.toLowerCase()} ${showDate(due.date)}`}
        </span>
        <span>
          {ticket.body.length > 0 && "Personal: stays in the workroom. "}Printed {showDate(today)}
        </span>
      </footer>
    </article>
  );
};
