import { QUICK_MINUTES } from "#lib/running/changes";
import type { Plot, PlotCell, PlotColumn } from "#lib/running/plot";
import type { Staging } from "#lib/staging/staging";
import { State } from "../../../_components/State";
import { nameOfRole } from "../../../_data/names";
import styles from "./Plot.module.css";
import { clock, costumeHref } from "./plotWords";

const WIDTH_PER_MINUTE = 7;
const [LEAST, MOST] = [96, 190];
const INTERVAL = 44;

const widthOf = (column: PlotColumn): number =>
  column.kind === "interval" ? INTERVAL : Math.min(MOST, Math.max(LEAST, column.scene.minutes * WIDTH_PER_MINUTE));

/** Scenes across, as wide as they are long within reason, roles down: who wears what when. */
export const PlotTable = ({ plot, staging, base }: { readonly plot: Plot; readonly staging: Staging; readonly base: string }) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard (WCAG 2.1.1).
  <section className={styles.frame} aria-label="Who wears what when" tabIndex={0}>
    <table className={styles.plot}>
      <thead>
        <tr>
          <th scope="col">Role</th>
          {plot.columns.map((column) =>
            column.kind === "scene" ? (
              <th key={column.scene.code} scope="col" style={{ minWidth: widthOf(column) }}>
                {column.scene.name}
                <span className="units">
                  {" "}
                  {clock(column.scene.starts)}, {column.scene.minutes} min
                </span>
              </th>
            ) : (
              <th key={`after ${column.after}`} scope="col" className={styles.interval} style={{ minWidth: widthOf(column) }}>
                <span className="unseen">Interval, </span>
                {column.minutes} min
              </th>
            ),
          )}
        </tr>
      </thead>
      <tbody>
        {plot.rows.map((row) => (
          <tr key={row.role}>
            <th scope="row">{nameOfRole(staging, row.role)}</th>
            {plot.columns.map((column) =>
              column.kind === "interval" ? (
                <td key={`after ${column.after}`} className={styles.interval} />
              ) : (
                <Worn key={column.scene.code} cell={row.cells.get(column.scene.code)} staging={staging} base={base} />
              ),
            )}
          </tr>
        ))}
      </tbody>
    </table>
  </section>
);

const Worn = ({ cell, staging, base }: { readonly cell: PlotCell | undefined; readonly staging: Staging; readonly base: string }) => {
  if (!cell) return <td />;
  return (
    <td className={styles.on}>
      {cell.change && <ChangeMark minutes={cell.change.minutes} />}
      {cell.costumes.map((code) => (
        <a key={code} href={costumeHref(base, code)}>
          {staging.costumes.find((costume) => costume.code === code)?.name ?? code}
        </a>
      ))}
    </td>
  );
};

/** The time there is to change into what is worn here. */
const ChangeMark = ({ minutes }: { readonly minutes: number }) => (
  <span className={styles.change}>
    {minutes <= QUICK_MINUTES ? (
      <State code={minutes < 1 ? "late" : "wait"}>{minutes < 1 ? "no time to change" : `${minutes} min to change`}</State>
    ) : (
      <span className="units">changed in {minutes} min</span>
    )}
  </span>
);
