import styles from "./OpenedLine.module.css";

/**
 * A line of a table whose arithmetic unfolds beneath it. It opens without scripts: the row below is shown while the `details` in the
 * first cell is open.
 */
export const OpenedLine = ({
  name,
  cells,
  columns,
  id,
  tick,
  children,
}: {
  readonly name: React.ReactNode;
  /** The other cells. */
  readonly cells: React.ReactNode;
  /** How many cells the line has, the first one counted. */
  readonly columns: number;
  readonly id?: string;
  /** Before the name, beside what opens the line: a box to tick. */
  readonly tick?: React.ReactNode;
  readonly children: React.ReactNode;
}) => (
  <tbody className={styles.line} id={id}>
    <tr>
      <td className="name">
        <div className={tick ? styles.ticked : undefined}>
          {tick}
          <details>
            <summary>{name}</summary>
          </details>
        </div>
      </td>
      {cells}
    </tr>
    <tr className={styles.unfolded}>
      <td colSpan={columns}>
        <div className="pre">{children}</div>
      </td>
    </tr>
  </tbody>
);
