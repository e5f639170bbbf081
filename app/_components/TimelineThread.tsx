import type { TimelineBar } from "#lib/charts/timeline";
import type { TimelineDays } from "#lib/charts/timelineDays";
import { fittingPins } from "#lib/charts/timelinePins";
import { lateNodes } from "#lib/charts/timelinePlan";
import { stopOf, thread } from "#lib/charts/timelineThread";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { nameOfPerformer } from "../_data/names";
import styles from "./Picture.module.css";
import { FRAME, rowMiddle } from "./timelineFrame";

interface Props {
  readonly plan: StagingPlan;
  readonly bars: readonly TimelineBar[];
  readonly axis: TimelineDays;
  readonly right: number;
}

/** The fitting room with a pin for each visit, and over everything the red thread of the latest garment. */
export const TimelineThread = ({ plan, bars, axis, right }: Props) => {
  const row = plan.staging.makers.length;
  const y = rowMiddle(row);
  const [first, last] = [axis.days[0]?.x ?? 0, right];
  const visits = new Map(
    plan.fittings.filter((fitting) => fitting.start !== null && fitting.visit !== null).map((fitting) => [fitting.visit, fitting]),
  );
  const pins = [...visits.values()]
    .map((fitting) => ({ x: axis.xOf(fitting.start!), name: nameOfPerformer(plan.staging, fitting.performer) }))
    .filter((pin) => pin.x > first && pin.x < last);
  const stops = lateNodes(plan).flatMap((node) => {
    const fitting = plan.fittings.find((one) => one.node === node);
    if (fitting?.start != null && fitting.end !== null) return [{ from: axis.xOf(fitting.start), to: axis.xOf(fitting.end), y }];
    return stopOf(bars, plan.nodes[node]!.key, rowMiddle) ?? [];
  });
  const { path, knots } = thread(stops);
  const worst = plan.garmentStates.reduce<StagingPlan["garmentStates"][number] | null>(
    (most, state) => (state.minutesLate > (most?.minutesLate ?? 0) ? state : most),
    null,
  );
  const end = stops.at(-1);
  return (
    <>
      <text x={0} y={FRAME.top + FRAME.row * row + 28} className={styles.name}>
        Fitting room
      </text>
      {fittingPins(pins, right).map((pin) => (
        <g key={`${pin.x} ${pin.name}`} className={styles.pin}>
          <circle cx={pin.x + 7} cy={y - 4} r={2.8} fill="currentColor" />
          <path d={`M${pin.x + 5.5} ${y - 2}L${pin.x} ${y + 6}`} stroke="currentColor" strokeWidth="1.6" />
          {pin.label && (
            <text x={pin.x + 13} y={y + 4} className={styles.tight}>
              {pin.label}
            </text>
          )}
        </g>
      ))}
      {path && <path d={path} className={styles.red} />}
      {knots.map((knot) => (
        <circle key={`${knot.x} ${knot.y}`} cx={knot.x} cy={knot.y} r={3.6} className={styles.knot} />
      ))}
      {worst && end && (
        <text x={end.to} y={end.y - FRAME.bar / 2 - 2} className={`${styles.strong} ${styles.bad} ${styles.right} ${styles.tight}`}>
          {worst.garment}, {worst.daysLate === 1 ? "1 day" : `${worst.daysLate} days`} late
        </text>
      )}
    </>
  );
};
