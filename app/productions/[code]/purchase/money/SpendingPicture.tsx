import type { Spending } from "#lib/purchasing/spending";
import { CATEGORY_WORDS } from "./categoryWords";
import styles from "./SpendingPicture.module.css";

const ROW = 34;
const LEFT = 236;
const WIDTH = 1000;

/**
 * A strip of cloth for each category: what came is solid, what is on order woven, what is yet to buy pale; a chalk line marks its budget. One
 * scale for all.
 */
export const SpendingPicture = ({ rows, money }: { readonly rows: readonly Spending[]; readonly money: (amount: number) => string }) => {
  const shown = rows.filter(({ forecast, budget }) => forecast > 0 || budget !== null);
  const most = Math.max(1, ...shown.map(({ forecast, budget }) => Math.max(forecast, budget ?? 0)));
  const scale = (WIDTH - LEFT - 130) / most;
  const height = shown.length * ROW + 8;
  const said = shown.map((row) => `${CATEGORY_WORDS[row.category]} ${money(row.forecast)}`).join(", ");
  return (
    <figure className={styles.figure}>
      <svg
        viewBox={`0 0 ${WIDTH} ${height}`}
        width={WIDTH}
        height={height}
        role="img"
        aria-label={`Money at the end: ${said}.`}
        className={styles.picture}
      >
        {shown.map((row, at) => (
          <g key={row.category} transform={`translate(0 ${at * ROW + 6})`}>
            <text x={LEFT - 12} y="16" className={styles.end}>
              {CATEGORY_WORDS[row.category]}
            </text>
            <rect x={LEFT} width={row.received * scale} height="22" className={styles.received} />
            <rect x={LEFT + row.received * scale} width={row.committed * scale} height="22" className={styles.committed} />
            <rect x={LEFT + (row.received + row.committed) * scale} width={row.toBuy * scale} height="22" className={styles.toBuy} />
            {row.budget !== null && (
              <path d={`M${LEFT + row.budget * scale} -3V25`} className={row.forecast > row.budget ? styles.over : styles.chalk} />
            )}
            <text x={LEFT + Math.max(row.forecast, row.budget ?? 0) * scale + 10} y="16">
              {money(row.forecast)}
            </text>
          </g>
        ))}
      </svg>
      <figcaption className="cap">
        Solid: received. Woven: on order. Pale: yet to buy. The dashed line is the budget of the kind.
      </figcaption>
    </figure>
  );
};
