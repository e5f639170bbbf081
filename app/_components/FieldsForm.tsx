"use client";

import { useActionState, useId } from "react";
import type { Action } from "../_gate/action";
import styles from "./FieldsForm.module.css";
import { Said } from "./Said";

/** One field of a form; what was typed is kept when the form is refused. */
export interface FormField {
  readonly name: string;
  readonly label: string;
  readonly kind?: "text" | "date" | "number" | "words" | "choice" | "file";
  readonly value?: string;
  readonly options?: readonly { readonly value: string; readonly name: string }[];
  readonly hint?: string;
  readonly required?: boolean;
  /** Files it takes. */
  readonly accept?: string;
}

/** A form of labelled fields that runs an action and says how it ended. It works before scripts load. */
export const FieldsForm = ({
  action,
  fields,
  hidden,
  press,
  busy,
  look = "press second",
}: {
  readonly action: Action;
  readonly fields: readonly FormField[];
  /** Values that are sent with it. */
  readonly hidden: Readonly<Record<string, string>>;
  readonly press: string;
  readonly busy: string;
  readonly look?: "press" | "press second";
}) => {
  const [outcome, submit, waiting] = useActionState(action, null);
  const refusal = outcome && !outcome.ok ? outcome : null;
  return (
    <form action={submit} className={`${styles.form} no-print`}>
      {Object.entries(hidden).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      <div className={styles.fields}>
        {fields.map((field) => (
          <Labelled key={field.name} field={field} wrong={refusal?.fields[field.name]} kept={refusal?.kept[field.name]} />
        ))}
      </div>
      <Said outcome={outcome} />
      <button type="submit" className={look} disabled={waiting}>
        {waiting ? busy : press}
      </button>
    </form>
  );
};

const Labelled = ({
  field: { name, label, kind = "text", value, options = [], hint, required, accept },
  wrong,
  kept,
}: {
  readonly field: FormField;
  readonly wrong: string | undefined;
  readonly kept: string | undefined;
}) => {
  const id = useId();
  const shared = {
    id,
    name,
    required,
    defaultValue: kept ?? value,
    "aria-invalid": wrong !== undefined,
    "aria-describedby": wrong && `${id}-wrong`,
  };
  return (
    <p className={`field ${kind === "words" ? styles.long : ""}`}>
      <label htmlFor={id}>
        {label}
        {hint && <span className="cap"> {hint}</span>}
      </label>
      {kind === "words" && <textarea {...shared} rows={3} />}
      {kind === "choice" && (
        <select key={kept} {...shared}>
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.name}
            </option>
          ))}
        </select>
      )}
      {kind === "file" && <input id={id} type="file" name={name} required={required} accept={accept} />}
      {(kind === "text" || kind === "date" || kind === "number") && <input type={kind} {...shared} />}
      {wrong && (
        <span id={`${id}-wrong`} className="bad">
          {wrong}
        </span>
      )}
    </p>
  );
};
