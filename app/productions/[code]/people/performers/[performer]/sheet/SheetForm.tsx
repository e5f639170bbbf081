"use client";

import { useActionState } from "react";
import { EditAnswer } from "../../../../../../_components/EditAnswer";
import { Field } from "../../../../../../_components/Field";
import { keepSheet } from "./actions";
import styles from "./Sheet.module.css";

/** A measurement as the form shows it. */
export interface SheetField {
  readonly name: string;
  readonly number: number;
  readonly label: string;
  readonly wanted: boolean;
}

interface Props {
  readonly production: string;
  readonly performer: string;
  readonly today: string;
  readonly fields: readonly SheetField[];
  readonly bodies: readonly (readonly [string, string])[];
  /** Written already, for example from a pasted row. */
  readonly texts?: Readonly<Record<string, string>>;
}

/** A sheet as it is taken: what the garments want first in mind, everything else beside it. An empty field was not taken. */
export const SheetForm = ({ production, performer, today, fields, bodies, texts = {} }: Props) => {
  const [outcome, submit, waiting] = useActionState(keepSheet, null);
  const kept = outcome && !outcome.ok ? outcome.kept : {};
  const replace = outcome && !outcome.ok ? outcome.fields.replace : undefined;
  return (
    <form action={submit} className="board">
      <input type="hidden" name="production" value={production} />
      <input type="hidden" name="performer" value={performer} />
      <div className={styles.head}>
        <Field name="taken" label="Taken on" outcome={outcome} type="date" required defaultValue={kept.taken ?? texts.taken ?? today} />
        <label className="field">
          Body
          <select name="body" defaultValue={kept.body ?? texts.body ?? "not noted"}>
            {bodies.map(([value, name]) => (
              <option key={value} value={value}>
                {name}
              </option>
            ))}
          </select>
        </label>
      </div>
      <div className={styles.fields}>
        {fields.map(({ name, number, label, wanted }) => (
          <Field
            key={name}
            id={`f-${name}`}
            name={name}
            label={`${number}. ${label}${wanted ? " (wanted)" : ""}`}
            outcome={outcome}
            inputMode="text"
            autoComplete="off"
            defaultValue={kept[name] ?? texts[name]}
          />
        ))}
      </div>
      <EditAnswer outcome={outcome} />
      {replace && (
        <label className={styles.replace}>
          <input type="checkbox" name="replace" value="yes" /> {replace}
        </label>
      )}
      <button type="submit" className={`press tall ${styles.keep}`} disabled={waiting}>
        {waiting ? "Keeping" : "Keep the sheet"}
      </button>
    </form>
  );
};
