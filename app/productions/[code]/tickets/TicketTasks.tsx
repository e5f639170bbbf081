import type { TicketLine } from "#lib/sheets/ticket";
import type { Minutes } from "#lib/units/quantities";
import styles from "./Tickets.module.css";

/** The tasks of a ticket with room to write on. */
export const TicketTasks = ({
  lines,
  makerOf,
  hours,
}: {
  readonly lines: readonly TicketLine[];
  readonly makerOf: (code: string | null) => string;
  readonly hours: (minutes: Minutes) => string;
}) => (
  <table className={styles.tasks}>
    <thead>
      <tr>
        <th scope="col">
          <span className="unseen">Done</span>
        </th>
        <th scope="col">Task</th>
        <th scope="col">By</th>
        <th scope="col" className="num">
          Likely
        </th>
        <th scope="col">Real</th>
        <th scope="col">Initials</th>
      </tr>
    </thead>
    <tbody>
      {lines.map((line) => (
        <tr key={`${line.part} ${line.name}`}>
          <td className={styles.box}>
            <i />
          </td>
          <td>
            <b>{line.name}</b>{" "}
            <span className="units">
              {[line.together.length > 0 ? `in one go with ${shortList(line.together)}` : "", ...line.cautions].filter(Boolean).join("; ")}
            </span>
          </td>
          <td>{makerOf(line.maker)}</td>
          <td className="num">{hours(line.minutes)}</td>
          <td className={styles.write} />
          <td className={styles.write} />
        </tr>
      ))}
    </tbody>
  </table>
);

/** A line holds a few numbers; the rest are counted. */
const shortList = (numbers: readonly string[]): string =>
  numbers.length <= 3 ? numbers.join(", ") : `${numbers.slice(0, 2).join(", ")} and ${numbers.length - 2} more`;
