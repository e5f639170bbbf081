import type { Staging } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import { markedAs, type TaskMark } from "#prisma/work/marks";
import { State } from "../../../../../_components/State";
import { Swatch } from "../../../../../_components/Swatch";
import { Woven } from "../../../../../_components/Woven";
import { garmentHref } from "../../../../../_data/address";
import { nameOfPerformer } from "../../../../../_data/names";
import styles from "./MakerDay.module.css";
import { MarkForm } from "./MarkForm";
import type { DayPart } from "./makerDay";

const NO_MARK: TaskMark = { state: "open", stuck: "", worked: 0 };
const STATES = { open: "none", begun: "hand", stuck: "wait", done: "done", dropped: "cut" } as const;

/** A day's stretches, one under the other, to be read from a table at arm's length. A task has its presses at its first stretch of the day. */
export const DayList = ({
  parts,
  staging,
  maker,
  marks,
  canMark,
}: {
  readonly parts: readonly DayPart[];
  readonly staging: Staging;
  readonly maker: string;
  readonly marks: ReadonlyMap<string, TaskMark>;
  readonly canMark: boolean;
}) =>
  parts.length === 0 ? (
    <p className="q">Nothing is planned for this day.</p>
  ) : (
    <ol className={styles.day}>
      {parts
        .map((part, at) => ({
          part,
          mark: (part.task && marks.get(markedAs(part.task))) ?? NO_MARK,
          isFirst: parts.findIndex(({ key }) => key === part.key) === at,
        }))
        .map(({ part, mark, isFirst }) => (
          <li key={`${part.start} ${part.key}`} className={part.kind === "fitting" ? styles.fitting : undefined}>
            <p className={styles.time}>
              {part.from}
              <span> to {part.to}</span>
            </p>
            <div>
              <p className={styles.name}>
                {part.task && <Swatch skill={part.task.skill} />}
                {part.name}
                {part.performer && `: ${nameOfPerformer(staging, part.performer)}`}
              </p>
              <p>
                {part.garments.map((number) => (
                  <Woven key={number} number={number} href={garmentHref(staging.production.code, number)} />
                ))}
              </p>
              <p className="cap">
                {showHours(part.minutes)}
                {part.whole !== part.minutes && ` of ${showHours(part.whole)}`}
                {part.goesOn.before && ", begun before"}
                {part.goesOn.after && ", goes on after"}
                {isFirst && mark.worked > 0 && `, ${showHours(mark.worked)} worked so far`}
                {part.room && `, ${staging.machines.find(({ code }) => code === part.room)?.name ?? part.room}`}
              </p>
              {isFirst && mark.state !== "open" && (
                <State code={STATES[mark.state]}>
                  {mark.state}
                  {mark.stuck && `: ${mark.stuck}`}
                </State>
              )}
            </div>
            {part.task && isFirst && canMark && (
              <MarkForm
                production={staging.production.code}
                maker={maker}
                task={part.task.key}
                name={`${part.name}${part.garments.length > 0 ? `, ${part.garments.join(", ")}` : ""}`}
                state={mark.state}
                likely={Math.max(0, part.whole - mark.worked)}
              />
            )}
          </li>
        ))}
    </ol>
  );
