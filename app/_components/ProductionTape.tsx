import type { PlainDate } from "#lib/calendar/plainDate";
import { showDay } from "#lib/calendar/showDay";
import { type TapePin, tape } from "#lib/charts/tape";
import type { Staging } from "#lib/staging/staging";
import { openDayOf } from "../_data/openDay";
import styles from "./Picture.module.css";

const WIDTH = 1392;

/** Heights of the tape on an ordinary page, and on the overview, where it is thick. */
const THIN = { top: 25, tall: 26, knob: 8, name: 13, height: 54, letters: 13, tier: 17 };
const THICK = { top: 52, tall: 38, knob: 20, name: 22, height: 110, letters: 15, tier: 36 };

interface Props {
  readonly staging: Staging;
  readonly today: PlainDate;
  readonly thick?: boolean;
}

/** Working days counted down to opening, milestones as pins. Nothing once the production has opened, or without a date for it. */
export const ProductionTape = ({ staging, today, thick = false }: Props) => {
  const at = thick ? THICK : THIN;
  const opening = staging.milestones.find((milestone) => milestone.kind === "opening");
  if (!opening) return null;
  const { unit, days, pins } = tape(today, opening.date, openDayOf(staging), staging.milestones, { width: WIDTH, letters: at.letters });
  if (days.length === 0) return null;
  const raised = pins.some((pin) => pin.tier > 0) ? at.tier : 0;
  const said = pins.map((pin) => `${pin.name} ${pin.small}`).join("; ");
  return (
    <svg
      className={styles.picture}
      viewBox={`0 ${-raised} ${WIDTH} ${at.height + raised}`}
      width={WIDTH}
      height={at.height + raised}
      role="img"
      aria-label={`${days.length - 1} working days to opening. ${said}.`}
    >
      <rect x={0} y={at.top} width={WIDTH} height={at.tall} style={{ fill: "var(--tape)", stroke: "var(--edge)", strokeWidth: 0.5 }} />
      {days.map((day) => (
        <g key={day.date}>
          <path
            d={`M${day.x} ${at.top}v${day.startsWeek ? at.tall : 9}`}
            style={{ stroke: "var(--tape-ink)", strokeWidth: day.startsWeek ? 1.6 : 1 }}
          />
          {day.figure && (
            <text x={day.x + unit / 2} y={at.top + at.tall / 2 + 6} className={`${styles.onTape} ${styles.centred} ${styles.strong}`}>
              {day.left}
            </text>
          )}
          {thick && (day.startsWeek || day.x === 0) && unit * 5 > 84 && (
            <text x={day.x + 2} y={at.top + at.tall + 14} className={styles.third}>
              {showDay(day.date)}
            </text>
          )}
        </g>
      ))}
      <path
        d={`M0 ${at.top}v${at.tall}M4 ${at.top}v${at.tall}M8 ${at.top}v${at.tall}`}
        style={{ stroke: "var(--ink-3)", strokeWidth: 2 }}
      />
      {pins.map((pin) => (
        <Milestone key={pin.name + pin.date} pin={pin} at={at} thick={thick} />
      ))}
    </svg>
  );
};

const Milestone = ({ pin, at, thick }: { readonly pin: TapePin; readonly at: typeof THIN; readonly thick: boolean }) => {
  const x = pin.label === "right" ? pin.x + 8 : pin.x - 8;
  const side = pin.label === "right" ? "" : styles.right;
  const up = pin.tier * at.tier;
  return (
    <>
      <path d={`M${pin.x} ${at.knob - up}V${at.top + 6}`} className={styles.ink} />
      <circle cx={pin.x} cy={at.knob - up} r={thick ? 4.5 : 3.6} style={{ fill: "var(--ink)" }} />
      {pin.label && (
        <text x={x} y={at.name - up} className={`${thick ? styles.name : styles.middle} ${side}`}>
          {pin.name}
        </text>
      )}
      {pin.label && pin.both && thick && (
        <text x={x} y={at.name + 17 - up} className={`${styles.second} ${side} ${styles.tight}`}>
          {pin.small}
        </text>
      )}
    </>
  );
};
