import type { FittedAt } from "#lib/fittings/answer";
import { nameOfPlace } from "#lib/fittings/places";
import type { Staging } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import { words as wordsOf } from "#lib/words/words";
import type { KeptMark } from "#prisma/fittings/marks";
import { ActionForm } from "../../../../../_components/ActionForm";
import { State, type StateCode } from "../../../../../_components/State";
import { dropFittingMark } from "./actions";
import styles from "./Fitting.module.css";
import { FittingFigure } from "./FittingFigure";
import { MarkForm } from "./MarkForm";

const STATES: Readonly<Record<KeptMark["finding"], StateCode>> = { fits: "done", alter: "alter", remake: "alter", note: "note" };

/** What was seen on this garment and performer, by numbered discs and as a list, and the form for another. */
export const Marks = ({
  at,
  marks,
  staging,
  canAnswer,
  part,
}: {
  readonly at: FittedAt;
  readonly marks: readonly KeptMark[];
  readonly staging: Staging;
  readonly canAnswer: boolean;
  /** Part of the page's address. */
  readonly part: string;
}) => {
  const words = wordsOf(staging.production.words);
  const workOf = (mark: KeptMark): string => {
    if (mark.task === null) return "";
    const task = staging.otherWork.find(({ code }) => code === mark.task);
    if (!task) return "the work was taken back";
    return `${words.skills[task.skill].toLowerCase()}, ${showHours(task.minutes[1])}${task.doneOn === null ? "" : ", done"}`;
  };
  return (
    <section className="part" aria-labelledby="marks">
      <h2 id="marks">Notes</h2>
      {!canAnswer && <FittingFigure marks={marks} />}
      {canAnswer && (
        <MarkForm
          at={at}
          production={staging.production.code}
          part={part}
          marks={marks.map(({ place, finding }) => ({ place, finding }))}
          skills={Object.entries(words.skills).filter(([skill]) => skill !== "fit")}
        />
      )}
      {marks.length === 0 && <p className="q part">Nothing is noted yet.</p>}
      <ol className={marks.length > 0 ? "lines part" : undefined}>
        {marks.map((mark, i) => (
          <li key={mark.id}>
            <div className={styles.mark}>
              <b className={styles.number}>{i + 1}</b>
              <b>{nameOfPlace(mark.place)}</b>
              <State code={STATES[mark.finding]}>{mark.finding}</State>
            </div>
            {mark.text && <p>{mark.text}</p>}
            <p className="cap">{[workOf(mark), mark.who].filter(Boolean).join("; ")}</p>
            {canAnswer && (
              <ActionForm action={dropFittingMark} press={`Take note ${i + 1} away`} busy="Taking away" look="plain">
                <input type="hidden" name="production" value={staging.production.code} />
                <input type="hidden" name="mark" value={mark.id} />
              </ActionForm>
            )}
          </li>
        ))}
      </ol>
    </section>
  );
};
