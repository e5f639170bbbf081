import { showDay } from "#lib/calendar/showDay";
import { textWidth } from "#lib/charts/textFit";
import type { Roll } from "#lib/purchasing/rolls";
import type { LengthSystem } from "#lib/units/showLength";
import { plural } from "../../../../_data/plural";
import { showQuantity } from "../../../../_data/quantity";
import styles from "./RollsPicture.module.css";

const WIDTH = 1392;
const LEFT = 150;
const ROW = 40;
const ROOM = WIDTH - LEFT - 190;

/** Every roll at one scale: what is cut off it, garment by garment, and what is left; the days it is cut at its end. */
export const RollsPicture = ({
  rolls,
  name,
  lengths,
}: {
  readonly rolls: readonly Roll[];
  readonly name: string;
  readonly lengths: LengthSystem;
}) => {
  const longest = Math.max(1, ...rolls.map(({ length, used }) => Math.max(length ?? 0, used)));
  const scale = ROOM / longest;
  const height = rolls.length * ROW + 6;
  return (
    <svg
      viewBox={`0 0 ${WIDTH} ${height}`}
      width={WIDTH}
      height={height}
      role="img"
      aria-label={`${plural(rolls.length, "roll")} of ${name}, ${showQuantity(
        rolls.reduce((sum, { used }) => sum + used, 0),
        "length",
        lengths,
      )} cut off.`}
      className={`${styles.picture} across`}
    >
      {rolls.map((roll, at) => (
        <g key={roll.roll} transform={`translate(0 ${at * ROW + 4})`}>
          <text x={0} y={15} className={styles.name}>
            Roll {roll.roll}
          </text>
          <text x={0} y={30} className={styles.second}>
            {roll.lot ? `lot ${roll.lot}` : "to buy"}
          </text>
          <g transform={`translate(${LEFT} 0)`}>
            {roll.length !== null && <rect width={roll.length * scale} height={30} className={styles.whole} />}
            {stretches(roll).map(({ garment, from, to }) => (
              <g key={`${garment} ${from}`}>
                <rect x={from * scale} width={(to - from) * scale} height={30} className={styles.cut} />
                {textWidth(garment, 12) + 8 < (to - from) * scale && (
                  <text x={((from + to) / 2) * scale} y={20} className={styles.middle}>
                    {garment}
                  </text>
                )}
              </g>
            ))}
            <text x={Math.max(roll.length ?? 0, roll.used) * scale + 10} y={20}>
              {showQuantity(roll.used, "length", lengths)}
              {roll.cutBy && `, by ${showDay(roll.cutBy)}`}
            </text>
          </g>
        </g>
      ))}
    </svg>
  );
};

/** Stretches along the roll that are one garment's, one after the other; where garments lie side by side, the first counts. */
const stretches = ({ pattern }: Roll): readonly { readonly garment: string; readonly from: number; readonly to: number }[] => {
  const found: { garment: string; from: number; to: number }[] = [];
  for (const { garment, y, length } of [...pattern.pieces].sort((a, b) => a.y - b.y || a.x - b.x)) {
    const last = found.at(-1);
    if (last && last.garment === garment) last.to = Math.max(last.to, y + length);
    else if (!last || y + length > last.to) found.push({ garment, from: Math.max(y, last?.to ?? 0), to: y + length });
  }
  return found;
};
