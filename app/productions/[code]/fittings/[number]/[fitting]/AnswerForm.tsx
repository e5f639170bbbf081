"use client";

import { useActionState } from "react";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { FittedAt } from "#lib/fittings/answer";
import { Said } from "../../../../../_components/Said";
import { keepFittingAnswer } from "./actions";
import styles from "./Fitting.module.css";

const SIGNED = [
  ["fit", "Fit", "the cutter"],
  ["movement", "Movement", "the performer"],
  ["look", "Look", "the designer"],
] as const;

/** Done, did not come, or once more: one touch each. */
export const AnswerForm = ({
  at,
  production,
  today,
}: {
  readonly at: FittedAt;
  readonly production: string;
  readonly today: PlainDate;
}) => {
  const [outcome, submit, waiting] = useActionState(keepFittingAnswer, null);
  return (
    <form action={submit} className={`${styles.form} part`}>
      <input type="hidden" name="production" value={production} />
      <input type="hidden" name="garment" value={at.garment} />
      <input type="hidden" name="fitting" value={at.fitting} />
      <input type="hidden" name="performer" value={at.performer} />
      {SIGNED.map(([name, label, who]) => (
        <label key={name} className={styles.tick}>
          <input type="checkbox" name={name} value="yes" />
          <span>
            <b>{label}</b> <span className="q">content, says {who}</span>
          </span>
        </label>
      ))}
      <label className="field" style={{ marginTop: 14 }}>
        Day
        <input type="date" name="on" defaultValue={today} required />
      </label>
      <label className="field">
        In words
        <input type="text" name="note" maxLength={300} autoComplete="off" />
      </label>
      <Said outcome={outcome} />
      <div className={styles.presses}>
        <button type="submit" name="answer" value="done" className="press" disabled={waiting}>
          Done
        </button>
        <button type="submit" name="answer" value="again" className="press second" disabled={waiting}>
          Once more
        </button>
        <button type="submit" name="answer" value="did not come" className="press second" disabled={waiting}>
          Did not come
        </button>
      </div>
    </form>
  );
};
