import type { Staging } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import { Swatch } from "../../../../../_components/Swatch";
import { Woven } from "../../../../../_components/Woven";
import { garmentHref } from "../../../../../_data/address";
import { nameOfPerformer } from "../../../../../_data/names";
import styles from "./MakerDay.module.css";
import type { DayPart } from "./makerDay";

/** A day's stretches, one under the other, to be read from a table at arm's length. */
export const DayList = ({ parts, staging }: { readonly parts: readonly DayPart[]; readonly staging: Staging }) =>
  parts.length === 0 ? (
    <p className="q">Nothing is planned for this day.</p>
  ) : (
    <ol className={styles.day}>
      {parts.map((part) => (
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
              {part.task && part.task.minutes !== part.minutes && ` of ${showHours(part.task.minutes)}`}
              {part.goesOn.before && ", begun before"}
              {part.goesOn.after && ", goes on after"}
              {part.room && `, ${staging.machines.find(({ code }) => code === part.room)?.name ?? part.room}`}
            </p>
          </div>
        </li>
      ))}
    </ol>
  );
