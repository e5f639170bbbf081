import { figureViews } from "#lib/charts/figure";
import type { Measurement } from "#lib/measurements/measurement";
import styles from "./Figure.module.css";

/** Where each measurement is taken: one neutral outline, front and back, with numbered discs that lead to their lines. No figure of a body is on it. */
export const Figure = ({
  measurements,
  labels,
  anchor = "m",
}: {
  readonly measurements: readonly Measurement[];
  readonly labels: Readonly<Record<Measurement, string>>;
  /** What the ids of its lines begin with. */
  readonly anchor?: string;
}) => (
  <div className={styles.figure}>
    {figureViews(measurements).map(({ view, width, height, outline, lines, notes }) => (
      <figure key={view}>
        <figcaption className="cap">{view === "front" ? "Front" : "Back"}</figcaption>
        <svg viewBox={`0 0 ${width} ${height}`} aria-labelledby={`figure-${view}`}>
          <title id={`figure-${view}`}>{`Where measurements are taken, ${view}`}</title>
          {outline.map((path) => (
            <path key={path} d={path} className={styles.body} />
          ))}
          {lines.map((path) => (
            <path key={path} d={path} className={styles.line} />
          ))}
          {notes.map(({ measurement, number, way, disc, leader: [from, to] }) => (
            <g key={measurement}>
              <path d={`M${from.x} ${from.y}L${to.x} ${to.y}`} className={styles.leader} />
              <path d={way} className={styles.way} />
              <a href={`#${anchor}-${measurement}`} className={styles.disc} aria-label={`${number}: ${labels[measurement]}`}>
                <circle cx={disc.x} cy={disc.y} r="22" className={styles.tap} />
                <circle cx={disc.x} cy={disc.y} r="13" className={styles.dot} />
                <text x={disc.x} y={disc.y + 4.5} textAnchor="middle">
                  {number}
                </text>
              </a>
            </g>
          ))}
        </svg>
      </figure>
    ))}
  </div>
);
