import { textWidth } from "#lib/charts/textFit";
import type { Span, TimelineBar } from "#lib/charts/timeline";
import type { TimelineDays } from "#lib/charts/timelineDays";
import type { Skill } from "#lib/labour/skills";
import styles from "./Picture.module.css";
import { skillCloth } from "./skillCloth";
import { FRAME, rowMiddle } from "./timelineFrame";

interface Props {
  readonly rows: readonly {
    readonly name: string;
    readonly trade: string;
    readonly away: readonly (Span & { readonly reason: string })[];
  }[];
  readonly bars: readonly TimelineBar[];
  readonly axis: TimelineDays;
  readonly right: number;
  readonly lateKeys: ReadonlySet<string>;
  readonly skills: ReadonlyMap<string, Skill>;
  /** Keys of what was fixed by hand. */
  readonly fixed: ReadonlySet<string>;
  /** Where a bar leads to; null: nobody may move it. */
  readonly hrefOf: ((key: string) => string) | null;
}

/** A row for each maker: name and trade, days away, and the bars of the work. */
export const TimelineRows = ({ rows, bars, axis, right, lateKeys, skills, fixed, hrefOf }: Props) => (
  <>
    {rows.map((row, at) => {
      const top = FRAME.top + FRAME.row * at;
      return (
        <g key={row.name}>
          <path d={`M0 ${top + FRAME.row}H${right}`} className={styles.hair} />
          <text x={0} y={top + 22} className={styles.name}>
            {row.name}
          </text>
          <text x={0} y={top + 38} className={styles.second}>
            {row.trade}
          </text>
          {row.away.map((span) => (
            <Away key={span.start} x={axis.xOf(span.start)} right={axis.xOf(span.end)} y={rowMiddle(at)} reason={span.reason} />
          ))}
        </g>
      );
    })}
    {bars.map((bar) => {
      const drawn = <Bar bar={bar} skill={skills.get(bar.key)!} isLate={lateKeys.has(bar.key)} isFixed={fixed.has(bar.key)} />;
      const key = `${bar.key} ${bar.x}`;
      if (!hrefOf || !bar.first) return <g key={key}>{drawn}</g>;
      return (
        <a
          key={key}
          href={hrefOf(bar.key)}
          aria-label={`Move ${bar.task}, ${rows[bar.row]!.name}${fixed.has(bar.key) ? ", fixed by hand" : ""}`}
          data-key={bar.key}
          data-row={bar.row}
          data-x={bar.x}
        >
          {drawn}
        </a>
      );
    })}
  </>
);

const Away = ({ x, right, y, reason }: { readonly x: number; readonly right: number; readonly y: number; readonly reason: string }) => {
  if (right - x < 8) return null;
  const room = textWidth(reason, 12) + 8;
  return (
    <>
      <path d={`M${x} ${y}H${right}M${x} ${y - 4}v8M${right} ${y - 4}v8`} style={{ stroke: "var(--ink-3)", strokeWidth: 1.4 }} />
      {room < right - x - 8 && (
        <>
          <rect x={(x + right - room) / 2} y={y - 8} width={room} height={16} style={{ fill: "var(--sheet)" }} />
          <text x={(x + right) / 2} y={y + 4} className={`${styles.second} ${styles.centred} ${styles.tight}`}>
            {reason}
          </text>
        </>
      )}
    </>
  );
};

const SELVEDGE = 8;

const Bar = ({
  bar,
  skill,
  isLate,
  isFixed,
}: {
  readonly bar: TimelineBar;
  readonly skill: Skill;
  readonly isLate: boolean;
  readonly isFixed: boolean;
}) => {
  const { weave, thread, pale } = skillCloth(skill);
  const y = FRAME.top + FRAME.row * bar.row + FRAME.barTop;
  const textX = bar.x + (bar.first ? SELVEDGE : 0) + 5;
  return (
    <>
      {bar.joinedFrom !== null && (
        <path d={`M${bar.joinedFrom} ${y + FRAME.bar / 2}H${bar.x}`} style={{ stroke: thread, strokeWidth: 2, strokeDasharray: "4 3" }} />
      )}
      <rect
        x={bar.x}
        y={y}
        width={bar.width}
        height={FRAME.bar}
        style={{ fill: pale, stroke: isLate ? "var(--madder)" : thread, strokeWidth: isLate ? 2 : 1 }}
      />
      {bar.first && (
        <rect x={bar.x} y={y} width={Math.min(SELVEDGE, bar.width)} height={FRAME.bar} style={{ fill: weave, stroke: thread }} />
      )}
      {bar.number && (
        <text x={textX} y={bar.name ? y + 14 : y + 21} className={`${styles.strong} ${styles.tight}`}>
          {bar.number}
        </text>
      )}
      {bar.name && (
        <text x={textX} y={y + 28} className={styles.tight}>
          {bar.name}
        </text>
      )}
      {isFixed && bar.first && (
        <>
          <path d={`M${bar.x + 4} ${y - 7}V${y + 4}`} style={{ stroke: "var(--ink)", strokeWidth: 1.6 }} />
          <circle cx={bar.x + 4} cy={y - 7} r={3.5} style={{ fill: "var(--ink)" }} />
        </>
      )}
      {bar.overtime.map((part) => (
        <path key={part.x} d={`M${part.x} ${y + FRAME.bar}h${part.width}`} style={{ stroke: "var(--madder)", strokeWidth: 3 }} />
      ))}
    </>
  );
};
