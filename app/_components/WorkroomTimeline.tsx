import { dayNumber } from "#lib/calendar/days";
import { MINUTES_PER_DAY, type PlainDate } from "#lib/calendar/plainDate";
import { showDay } from "#lib/calendar/showDay";
import { pinLabels } from "#lib/charts/tapeLabels";
import { timelineBars } from "#lib/charts/timeline";
import { timelineDays } from "#lib/charts/timelineDays";
import { awaySpans, lateNodes, timelineSpan, timelineTasks } from "#lib/charts/timelinePlan";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import styles from "./Picture.module.css";
import { TimelineAxis } from "./TimelineAxis";
import { TimelineHand } from "./TimelineHand";
import { TimelineRows } from "./TimelineRows";
import { TimelineThread } from "./TimelineThread";
import { FRAME } from "./timelineFrame";

const WIDTH = 1392;
/** Under this a day's bars say nothing; a longer plan is drawn wider and scrolls. */
const LEAST_DAY = 24;

interface Props {
  readonly plan: StagingPlan;
  readonly today: PlainDate;
  /** First and last week drawn; by default from today's to that of the last work. */
  readonly from?: PlainDate;
  readonly to?: PlainDate;
  /** Page that shows what follows from moving work; absent: nobody here may move any. */
  readonly moveHref?: string;
  /** Keys of what was fixed by hand. */
  readonly fixed?: ReadonlySet<string>;
}

const NOTHING: ReadonlySet<string> = new Set();

/** The plan on the wall: makers down, working days across, the fitting room below, the red thread through what is late. */
export const WorkroomTimeline = ({ plan, today, from = today, to, moveHref, fixed = NOTHING }: Props) => {
  const { makers, milestones } = plan.staging;
  const span = timelineSpan(plan, from, to ?? null);
  const weeks = Math.ceil((span.last - span.first + 1) / 7);
  const width = Math.max(WIDTH - FRAME.left, weeks * (span.weekdays.size * LEAST_DAY + 10));
  const axis = timelineDays({ ...span, left: FRAME.left, width });
  const bars = timelineBars(timelineTasks(plan), axis);
  const bottom = FRAME.top + FRAME.row * (makers.length + 1);
  const inside = (date: PlainDate) => span.first <= dayNumber(date) && dayNumber(date) <= span.last;
  const pins = [...milestones.map((milestone) => ({ ...milestone, isToday: false })), { name: "Today", date: today, at: 0, isToday: true }]
    .filter(({ date }) => inside(date))
    .map(({ name, date, at, isToday }) => ({ name, small: showDay(date), x: axis.xOf(dayNumber(date) * MINUTES_PER_DAY + at), isToday }))
    .sort((a, b) => a.x - b.x);
  const labelled = pinLabels(pins, FRAME.left + width, 13);
  const raised = labelled.some((pin) => pin.tier > 0) ? FRAME.tier : 0;
  const late = plan.garmentStates.filter((state) => state.minutesLate > 0).length;
  const lateKeys = new Set(lateNodes(plan).map((node) => plan.nodes[node]!.key));
  const picture = (
    <svg
      className={`${styles.picture} across`}
      viewBox={`0 ${-raised} ${FRAME.left + width} ${bottom + 8 + raised}`}
      width={FRAME.left + width}
      height={bottom + 8 + raised}
      role={moveHref ? "group" : "img"}
      aria-label={`The workroom's plan: ${makers.length} makers over ${weeks} weeks, ${bars.length} bars, ${late} garments late.`}
    >
      <TimelineAxis axis={axis} bottom={bottom} pins={labelled} />
      <TimelineRows
        rows={makers.map((maker) => ({ name: maker.name, trade: maker.trade, away: awaySpans(plan.staging, maker.code) }))}
        bars={bars}
        axis={axis}
        right={FRAME.left + width}
        lateKeys={lateKeys}
        skills={new Map(plan.tasks.map((task) => [task.key, task.skill]))}
        fixed={fixed}
        hrefOf={moveHref === undefined ? null : (key) => `${moveHref}?key=${encodeURIComponent(key)}`}
      />
      <TimelineThread plan={plan} bars={bars} axis={axis} right={FRAME.left + width} />
    </svg>
  );
  return moveHref === undefined ? (
    picture
  ) : (
    <TimelineHand
      href={moveHref}
      grip={{ days: axis.days.map(({ date, x }) => ({ date, x })), dayWidth: axis.dayWidth, from: span.from, to: span.to }}
      rows={makers.map(({ code, name }) => ({ code, name }))}
      row={FRAME.row}
    >
      {picture}
    </TimelineHand>
  );
};
