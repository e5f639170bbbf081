import { type CuttingLine, cuttingPicture, cuttingScale, type DrawnGroup } from "#lib/charts/cuttingPicture";
import { textWidth } from "#lib/charts/textFit";
import type { CutPattern, CuttingPlan } from "#lib/cutting/cuttingPlan";
import { LENGTH_PER_MM, LENGTH_PER_YARD } from "#lib/units/quantities";
import type { LengthSystem } from "#lib/units/showLength";
import { plural } from "../../../../_data/plural";
import { showQuantity } from "../../../../_data/quantity";
import styles from "./CuttingPicture.module.css";

const WIDTH = 1392;
/** Left of the cloth: the roll it comes from. */
const LEFT = 54;
const CLOTH = 200;
const BAR = 46;
const TAPE = 22;
const GAP = 26;
/** So much of the page's width shows that cloth is left after the last piece. */
const REST = 0.12;

const tapeOf = (lengths: LengthSystem) =>
  lengths === "in" ? { every: LENGTH_PER_YARD, parts: 4, unit: "yd" } : { every: 1000 * LENGTH_PER_MM, parts: 10, unit: "m" };

/** One stock as it is cut, at true scale: selvedges above and below, pieces with their figures, rests hatched, a tape beneath; broken for the page. */
export const CuttingPicture = ({
  plan,
  pattern,
  lengths,
  most = 40,
}: {
  readonly plan: CuttingPlan;
  readonly pattern: CutPattern;
  readonly lengths: LengthSystem;
  /** Lines drawn; the table has all of it. */
  readonly most?: number;
}) => {
  const { cuttable, stock } = plan;
  const tape = tapeOf(lengths);
  const width = WIDTH - LEFT - 16;
  const scale = cuttingScale(cuttable, stock ?? plan.used, CLOTH, width);
  // Of a long rest only its beginning is drawn: the rest of the roll stays on the roll.
  const cut = pattern.pieces.reduce((most, { y, length }) => Math.max(most, y + length), 0);
  const end = cuttable === null ? (stock ?? plan.used) : Math.min(stock ?? cut, cut + Math.round((REST * width) / scale));
  const lines = cuttingPicture(pattern, end, { cuttable, bar: BAR, width, scale, tape });
  const height = (lines[0]?.height ?? BAR) + TAPE + GAP;
  const said = `${plural(pattern.pieces.length, "piece")} cut from ${showQuantity(stock ?? plan.used, "length", lengths)}, in ${plural(lines.length, "line")}.`;
  return (
    <>
      {lines.slice(0, most).map((line, at) => (
        <svg
          key={line.from}
          viewBox={`0 -14 ${WIDTH} ${height}`}
          width={WIDTH}
          height={height}
          role="img"
          aria-label={at === 0 ? said : `Line ${at + 1}, from ${showQuantity(line.from, "length", lengths)} on.`}
          className={`${styles.picture} across`}
        >
          <g transform={`translate(${LEFT} 0)`}>
            {at === 0 && <Roll height={line.height} cuttable={cuttable} lengths={lengths} />}
            <Line line={line} isCloth={cuttable !== null} lengths={lengths} />
            <Tape line={line} unit={tape.unit} />
            {at > 0 && <Broken x={-10} height={line.height} />}
            {(line.goesOn || end < (stock ?? end)) && <Broken x={line.width + 10} height={line.height} />}
          </g>
        </svg>
      ))}
      {pattern.offcut > 0 && cuttable !== null && (
        <p className="cap">{showQuantity(pattern.offcut, "length", lengths)} stays on the roll.</p>
      )}
      {lines.length > most && (
        <p className="cap">
          The first {most} of {lines.length} lines are drawn; the table has every piece.
        </p>
      )}
    </>
  );
};

const Roll = ({
  height,
  cuttable,
  lengths,
}: {
  readonly height: number;
  readonly cuttable: number | null;
  readonly lengths: LengthSystem;
}) =>
  cuttable !== null && (
    <g>
      <rect x={-LEFT + 4} y={-4} width={34} height={height + 8} className={styles.roll} />
      <text transform={`translate(${-LEFT + 26} ${height / 2}) rotate(-90)`} className={styles.middle}>
        {showQuantity(cuttable, "length", lengths, true)}
      </text>
    </g>
  );

const Line = ({ line, isCloth, lengths }: { readonly line: CuttingLine; readonly isCloth: boolean; readonly lengths: LengthSystem }) => (
  <>
    {line.rests.map((rest) => (
      <rect
        key={`${rest.x} ${rest.y}`}
        x={rest.x}
        y={rest.y}
        width={rest.width}
        height={rest.height}
        className={rest.kept ? styles.kept : styles.waste}
      />
    ))}
    {line.pieces.map(({ piece, x, y, width, height }, at) => (
      <rect
        // biome-ignore lint/suspicious/noArrayIndexKey: pieces of one line lie still.
        key={at}
        x={x}
        y={y}
        width={width}
        height={height}
        className={piece.turned ? styles.turned : styles.piece}
      />
    ))}
    <rect width={line.width} height={line.height} className={styles.edge} />
    {isCloth && <path d={`M0 3H${line.width}M0 ${line.height - 3}H${line.width}`} className={styles.selvedge} />}
    {line.groups.map((group) => (
      <Label key={`${group.x} ${group.y}`} group={group} lengths={lengths} room={isCloth ? line.height : BAR} />
    ))}
  </>
);

/** Big figure and measure of alike pieces, where there is room for them. */
const Label = ({ group, lengths, room }: { readonly group: DrawnGroup; readonly lengths: LengthSystem; readonly room: number }) => {
  const measure = showQuantity(group.length, "length", lengths, true);
  const size = group.count > 1 ? `${group.count} × ${measure}` : measure;
  const wide = Math.max(textWidth(group.label, 17), textWidth(size, 13)) + 14;
  const fits = wide <= group.width;
  if (!fits && textWidth(size, 13) + 8 > group.width) return null;
  const tall = fits && room >= 60;
  return (
    <g transform={`translate(${group.x} ${group.y})`}>
      <rect
        x={-(fits ? wide : textWidth(size, 13) + 8) / 2}
        y={tall ? -23 : -11}
        width={fits ? wide : textWidth(size, 13) + 8}
        height={tall ? 44 : 22}
        className={styles.label}
      />
      {tall && (
        <text y={-3} className={styles.big}>
          {group.label}
        </text>
      )}
      <text y={tall ? 15 : 5} className={styles.middle}>
        {size}
      </text>
    </g>
  );
};

const Tape = ({ line, unit }: { readonly line: CuttingLine; readonly unit: string }) => (
  <g transform={`translate(0 ${line.height + 5})`}>
    <rect width={line.width} height={TAPE - 4} className={styles.tape} />
    {line.ticks.map(({ x, mark }) => (
      <g key={x}>
        <path d={`M${x} 0v${mark === null ? 6 : TAPE - 4}`} className={mark === null ? styles.tick : styles.mark} />
        {mark !== null && x < line.width - 34 && (
          <text x={x + 4} y={14} className={styles.onTape}>
            {mark} {unit}
          </text>
        )}
      </g>
    ))}
  </g>
);

const Broken = ({ x, height }: { readonly x: number; readonly height: number }) => (
  <path d={`M${x} 0l6 ${height * 0.4}l-12 ${height * 0.2}l6 ${height * 0.4}`} className={styles.broken} />
);
