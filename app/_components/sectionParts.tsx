import type { Dimension } from "#lib/charts/section";
import type { Point } from "#lib/charts/sectionNet";
import styles from "./SectionDrawing.module.css";

/** A path through points. */
export const through = (points: readonly Point[]): string => `M${points.map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`).join("L")}`;

/** Words in a picture, with fractions set as fractions. */
export const PictureText = ({ at, className, children }: { readonly at: Point; readonly className: string; readonly children: string }) => (
  <text x={at.x} y={at.y} className={className}>
    {children.split(/(\d+\/\d+)/).map((part, index) =>
      index % 2 === 1 ? (
        // biome-ignore lint/suspicious/noArrayIndexKey: parts of one text never move
        <tspan key={index} className="fr">
          {part}
        </tspan>
      ) : (
        part
      ),
    )}
  </text>
);

/** A measured line with slanted ticks, its words on it. */
export const DimensionLine = ({ dimension: { from, to, text, thin } }: { readonly dimension: Dimension }) => {
  const middle = (from.x + to.x) / 2;
  const half = Math.min(text.length * 3.6 + 8, (to.x - from.x) / 2 - 12);
  return (
    <g>
      <path d={thin.map(through).join("")} className={styles.thin} strokeWidth=".8" />
      <path d={through([from, to])} className={styles.line} />
      <path d={`M${from.x + 2.5} ${from.y - 5}l-5 10M${to.x + 2.5} ${to.y - 5}l-5 10`} className={styles.line} strokeWidth="1.6" />
      <rect x={middle - half} y={from.y - 9} width={Math.max(0, 2 * half)} height="16" className={styles.paper} />
      <PictureText at={{ x: middle, y: from.y + 4.5 }} className={`${styles.text} ${styles.middle}`}>
        {text}
      </PictureText>
    </g>
  );
};
