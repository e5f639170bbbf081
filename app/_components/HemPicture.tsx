import { civilOf, dayNumber } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { type HemBar, type HemGroup, hem } from "#lib/charts/hem";
import type { Skill } from "#lib/labour/skills";
import type { LoadCell, StagingPlan } from "#lib/planning/stagingPlan";
import { words } from "#lib/words/words";
import { wholeHours } from "../_data/hours";
import { nameOfMaker } from "../_data/names";
import styles from "./Picture.module.css";
import { skillCloth } from "./skillCloth";

const SIZE = { width: 1392, full: 150, barGap: 4, groupGap: 22, leastGroup: 96 };
/** Makers are headed by their first names, so that a whole workroom hangs from one rail. */
const MAKERS = { ...SIZE, barGap: 1, groupGap: 12, leastGroup: 60 };
const RAIL = 70;

/** Hours needed against hours free, by skill or maker and week: width is hours free, length hours needed, and what hangs below the chalk line is over. */
export const HemPicture = ({
  plan,
  by = "skill",
}: {
  readonly plan: Pick<StagingPlan, "load" | "staging" | "tasks">;
  readonly by?: LoadCell["by"];
}) => {
  const cells = plan.load.filter((cell) => cell.by === by).map(({ code, week, planned, free }) => ({ code, week, needed: planned, free }));
  const picture = hem(cells, by === "skill" ? SIZE : MAKERS);
  if (picture.groups.length === 0) return null;
  const names = words(plan.staging.production.words).skills;
  const nameOf = (group: HemGroup) => (by === "skill" ? names[group.code as Skill] : firstName(nameOfMaker(plan.staging, group.code)));
  const skillOf = (group: HemGroup) => (by === "skill" ? (group.code as Skill) : mostWorked(plan, group.code));
  const said = picture.groups.map(
    (group) => `${nameOf(group)} ${needOf(group)}${group.over > 0 ? `, ${wholeHours(group.over)} over` : ""}`,
  );
  const chalk = RAIL + SIZE.full;
  const height = chalk + picture.hang + 24;
  return (
    <svg
      className={`${styles.picture} across`}
      viewBox={`-14 0 ${picture.width + 28} ${height}`}
      width={picture.width + 28}
      height={height}
      role="img"
      aria-label={`Hours needed against hours free, by ${by} and week. ${said.join("; ")}.`}
    >
      <path d={`M0 ${RAIL}H${picture.width}`} className={styles.ink} style={{ strokeWidth: 3, strokeLinecap: "round" }} />
      {picture.groups.map((group) => (
        <g key={group.code}>
          <text x={group.x} y={14} className={styles.name}>
            {nameOf(group)}
          </text>
          <text x={group.x} y={31} className={styles.second}>
            {needOf(group)}
          </text>
          {group.over > 0 && (
            <text x={group.x} y={47} className={`${styles.strong} ${styles.bad}`}>
              {overHours(group.over)} h over
            </text>
          )}
          {group.bars.map((bar) => (
            <Bar key={bar.week} bar={bar} skill={skillOf(group)} />
          ))}
        </g>
      ))}
      {picture.groups
        .flatMap((group) => group.bars.map((bar) => ({ key: `${group.code} ${bar.week}`, below: bar.below })))
        .map(({ key, below }) => below && below.over >= LEAST_SAID && <Over key={key} below={below} />)}
      <path d={`M-14 ${chalk}H${picture.width + 14}`} className={styles.chalk} />
    </svg>
  );
};

const firstName = (name: string): string => name.split(" ")[0]!;

/** The skill a maker works most in: her bars are of its cloth. */
const mostWorked = ({ tasks, staging }: Pick<StagingPlan, "tasks" | "staging">, maker: string): Skill => {
  const minutes = (skill: Skill) =>
    tasks.filter((task) => task.maker === maker && task.skill === skill).reduce((sum, task) => sum + task.minutes, 0);
  const skills = Object.keys(staging.makers.find(({ code }) => code === maker)?.skills ?? {}) as Skill[];
  return skills.toSorted((a, b) => minutes(b) - minutes(a))[0] ?? "hand";
};

const needOf = (group: HemGroup): string => `${wholeHours(group.needed)} of ${wholeHours(group.free)} h`;

/** Minutes over that get a figure of their own under the bar; fewer are in the sum at the head. */
const LEAST_SAID = 30;

/** Narrower bars have no room for the day of their Monday. */
const LEAST_HEADED = 15;

const Bar = ({ bar, skill }: { readonly bar: HemBar; readonly skill: Skill }) => {
  const { weave, thread } = skillCloth(skill);
  const middle = bar.x + bar.width / 2;
  const chalk = RAIL + SIZE.full;
  return (
    <>
      {bar.width >= LEAST_HEADED && (
        <text x={middle} y={RAIL - 6} className={`${styles.third} ${styles.centred}`}>
          {civilOf(dayNumber(bar.week as PlainDate)).day}
        </text>
      )}
      {bar.width > 0 && <rect x={bar.x} y={RAIL} width={bar.width} height={SIZE.full} className={styles.free} />}
      {bar.above > 0 && <rect x={bar.x} y={RAIL} width={bar.width} height={bar.above} style={{ fill: weave, stroke: thread }} />}
      {bar.below && <rect x={bar.below.x} y={chalk} width={bar.below.width} height={bar.below.length} className={styles.over} />}
    </>
  );
};

/** Hours over, beneath what hangs: after all bars, so that none covers them. */
const Over = ({ below }: { readonly below: NonNullable<HemBar["below"]> }) => (
  <text
    x={below.x + below.width / 2}
    y={RAIL + SIZE.full + below.length + 15}
    className={`${styles.strong} ${styles.bad} ${styles.centred}`}
  >
    +{overHours(below.over)}
  </text>
);

/** Whole hours where there are any, else tenths. */
const overHours = (minutes: number): string => (minutes >= LEAST_SAID ? String(Math.round(minutes / 60)) : (minutes / 60).toFixed(1));
