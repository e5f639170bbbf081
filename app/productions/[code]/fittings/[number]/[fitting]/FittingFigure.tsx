import { figureViews } from "#lib/charts/figure";
import type { Finding } from "#lib/fittings/answer";
import { FIGURE_PLACES, type FigurePlace } from "#lib/fittings/places";
import styles from "./Fitting.module.css";

/** A mark as the figure shows it. */
export interface ShownMark {
  readonly place: string;
  readonly finding: Finding;
}

/** Middle of the figure and its crown, in the units of the drawing. */
const MIDDLE = 180;
const CROWN = 26;
const DISC = 25;

/** Discs at one place stand beside each other. */
const aside = (marks: readonly ShownMark[], at: number): number =>
  marks.slice(0, at).filter(({ place }) => place === marks[at]?.place).length * DISC * 1.6;

/** One neutral outline, front and back, with a numbered disc for each mark. Nothing of any body is on it. */
export const FittingFigure = ({
  marks,
  here = null,
  onPoint,
}: {
  readonly marks: readonly ShownMark[];
  /** The place in hand. */
  readonly here?: FigurePlace | null;
  /** A point was touched, in the units of the places. */
  readonly onPoint?: (view: FigurePlace["view"], x: number, y: number) => void;
}) => (
  <div className={styles.figure}>
    {figureViews([]).map(({ view, width, height, outline, lines }) => {
      const own = marks.flatMap((mark, at) => {
        const place = FIGURE_PLACES.find(({ code }) => code === mark.place);
        return place?.view === view ? [{ ...mark, at, x: MIDDLE + place.x + aside(marks, at), y: CROWN + place.y }] : [];
      });
      return (
        <figure key={view}>
          {/* biome-ignore lint/a11y/useKeyWithClickEvents: the list of places beside it does the same by keyboard. */}
          <svg
            viewBox={`0 0 ${width} ${height}`}
            role="img"
            aria-label={`${view === "front" ? "Front" : "Back"}: ${own.map(({ at, finding }) => `${at + 1} ${finding}`).join(", ") || "no marks"}`}
            onClick={
              onPoint &&
              ((event) => {
                const box = event.currentTarget.getBoundingClientRect();
                const scale = Math.min(box.width / width, box.height / height);
                const left = (box.width - width * scale) / 2;
                const top = (box.height - height * scale) / 2;
                onPoint(view, (event.clientX - box.left - left) / scale - MIDDLE, (event.clientY - box.top - top) / scale - CROWN);
              })
            }
          >
            {outline.map((path) => (
              <path key={path} d={path} className={styles.body} />
            ))}
            {lines.map((path) => (
              <path key={path} d={path} className={styles.line} />
            ))}
            {here?.view === view && <circle cx={MIDDLE + here.x} cy={CROWN + here.y} r={DISC + 6} className={styles.here} />}
            {own.map(({ at, finding, x, y }) => (
              <g key={at} className={styles[finding]}>
                <circle cx={x} cy={y} r={DISC} className={styles.disc} />
                <text x={x} y={y + 10} textAnchor="middle">
                  {at + 1}
                </text>
              </g>
            ))}
          </svg>
          <figcaption className="cap">{view === "front" ? "front" : "back"}</figcaption>
        </figure>
      );
    })}
  </div>
);
