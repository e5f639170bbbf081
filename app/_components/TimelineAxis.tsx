import { civilOf, dayNumber } from "#lib/calendar/days";
import { showDay } from "#lib/calendar/showDay";
import type { LabelledPin } from "#lib/charts/tapeLabels";
import type { TimelineDay, TimelineDays } from "#lib/charts/timelineDays";
import styles from "./Picture.module.css";
import { FRAME } from "./timelineFrame";

interface Props {
  readonly axis: TimelineDays;
  readonly bottom: number;
  readonly pins: readonly (LabelledPin & { readonly isToday: boolean })[];
}

/** What lies behind the bars: the cloth of the weeks, the tape with its days, closed days, milestones and today. */
export const TimelineAxis = ({ axis, bottom, pins }: Props) => (
  <>
    {axis.days.map((day, at) => (
      <Day key={day.date} day={day} width={axis.dayWidth} bottom={bottom} isFirst={at === 0 || day.startsWeek} />
    ))}
    {pins.map((pin) => (
      <g key={`${pin.name} ${pin.small}`}>
        {pin.isToday ? (
          <>
            <path d={lineAt(pin.x, 46, bottom)} style={{ stroke: "var(--ink)", strokeWidth: 5 }} />
            <path d={lineAt(pin.x, FRAME.tape, bottom)} style={{ stroke: "var(--tape)", strokeWidth: 2.6 }} />
          </>
        ) : (
          <>
            <path d={lineAt(pin.x, 28 - up(pin), bottom)} className={styles.ink} />
            <circle cx={pin.x} cy={28 - up(pin)} r={4.5} style={{ fill: "var(--ink)" }} />
          </>
        )}
        {pin.label && <PinName pin={pin} />}
      </g>
    ))}
  </>
);

const up = (pin: LabelledPin): number => pin.tier * FRAME.tier;

/** Down through the tape, and on below the line of the weeks. */
const lineAt = (x: number, top: number, bottom: number): string => `M${x} ${top}V${FRAME.tape + 28}M${x} ${FRAME.top - 4}V${bottom}`;

const PinName = ({ pin }: { readonly pin: LabelledPin }) => {
  const x = pin.x + (pin.label === "left" ? -8 : 8);
  const side = pin.label === "left" ? styles.right : "";
  return (
    <>
      <text x={x} y={24 - up(pin)} className={`${styles.middle} ${side}`}>
        {pin.name}
      </text>
      {pin.both && (
        <text x={x} y={40 - up(pin)} className={`${styles.second} ${side} ${styles.tight}`}>
          {pin.small}
        </text>
      )}
    </>
  );
};

const LEAST_FIGURE = 18;

const Day = ({
  day,
  width,
  bottom,
  isFirst,
}: {
  readonly day: TimelineDay;
  readonly width: number;
  readonly bottom: number;
  readonly isFirst: boolean;
}) => {
  const middle = day.x + width / 2;
  const turned = (FRAME.top + bottom) / 2;
  return (
    <>
      <rect x={day.x} y={FRAME.tape} width={width} height={26} style={{ fill: "var(--tape)" }} />
      <path d={`M${day.x} ${FRAME.tape}v${isFirst ? 26 : 8}`} style={{ stroke: "var(--tape-ink)", strokeWidth: isFirst ? 1.5 : 1 }} />
      {(isFirst || width >= LEAST_FIGURE) && (
        <text x={middle} y={FRAME.tape + 19} className={`${styles.onTape} ${styles.centred}`}>
          {civilOf(dayNumber(day.date)).day}
        </text>
      )}
      {isFirst && (
        <text x={day.x} y={97} className={styles.second}>
          {showDay(day.date)}
        </text>
      )}
      <rect
        x={day.x}
        y={FRAME.top}
        width={width}
        height={bottom - FRAME.top}
        style={{ fill: day.closed === null ? "var(--sheet)" : "var(--fold)" }}
      />
      <path d={`M${day.x} ${FRAME.top}V${bottom}`} className={styles.hair} />
      {day.closed !== null && (
        <>
          <rect x={day.x} y={FRAME.top} width={width} height={bottom - FRAME.top} style={{ fill: "url(#pshut)" }} />
          <text transform={`translate(${middle + 4} ${turned}) rotate(-90)`} className={`${styles.second} ${styles.centred}`}>
            {day.closed}
          </text>
        </>
      )}
    </>
  );
};
