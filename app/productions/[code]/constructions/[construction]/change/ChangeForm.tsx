"use client";

import { startTransition, useActionState, useEffect, useRef } from "react";
import { ROW_LISTS } from "#lib/constructions/rowActs";
import { FaultTable } from "../../../../../_components/FaultTable";
import { Field } from "../../../../../_components/Field";
import { Said } from "../../../../../_components/Said";
import { changeConstruction } from "./actions";
import styles from "./Draft.module.css";
import { DraftList } from "./DraftList";
import type { DraftState } from "./draftState";
import { Effect } from "./Effect";

/** How long the hands must rest before the figures are worked out anew. */
const REST_MS = 400;

/** A construction as tables of fields. What it would do is worked out at a press, and by itself once scripts are there. */
export const ChangeForm = ({
  production,
  construction,
  version,
  first,
}: {
  readonly production: string;
  readonly construction: string;
  readonly version: number;
  readonly first: DraftState;
}) => {
  const [outcome, submit, waiting] = useActionState(changeConstruction, null);
  const last = useRef(first);
  useEffect(() => {
    if (outcome?.ok && outcome.value) last.current = outcome.value;
  }, [outcome]);
  const state = (outcome?.ok && outcome.value) || last.current;
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const workOut = (form: HTMLFormElement) => {
    clearTimeout(timer.current);
    timer.current = setTimeout(() => startTransition(() => submit(new FormData(form))), REST_MS);
  };
  const { names, faults } = { names: state.draft.construction, faults: outcome && !outcome.ok ? outcome.faults : state.draft.faults };
  return (
    <form action={submit} onChange={(event) => workOut(event.currentTarget)} aria-busy={waiting}>
      <input type="hidden" name="production" value={production} />
      <input type="hidden" name="construction" value={construction} />
      <input type="hidden" name="version" value={version} />
      <input type="hidden" name="acts" value={state.acts.join(" ")} />
      {/* The first press of a form is the one Enter presses. */}
      <button type="submit" name="press" value="work it out" className="unseen" tabIndex={-1} aria-hidden="true" />
      <div className={styles.names}>
        <Field name="v.name.uk" label="Name" outcome={null} defaultValue={names.name.uk} />
        <Field name="v.name.us" label="Name in US words" outcome={null} defaultValue={names.name.us} />
        <Field name="v.source" label="Where its figures come from" outcome={null} defaultValue={names.source} />
      </div>
      {ROW_LISTS.map((list) => (
        <DraftList key={list} list={list} state={state} />
      ))}
      <div className={styles.effect}>
        {faults.length > 0 ? <FaultTable faults={faults} /> : state.effect && <Effect effect={state.effect} />}
        {outcome && !outcome.ok && <Said outcome={outcome} />}
        <div className={styles.presses}>
          <button type="submit" name="press" value="work it out" className="press second" disabled={waiting}>
            Work it out
          </button>
          <label className="field">
            Keep it as
            <select name="as" defaultValue="version">
              <option value="version">the next version</option>
              <option value="copy">a construction of its own</option>
            </select>
          </label>
          <Field name="newCode" label="Code of its own, for a copy" outcome={outcome} placeholder="summer-tutu" />
          <label className="field">
            Garments made so
            <select name="pieces" defaultValue="none">
              <option value="none">stay with the version they have</option>
              <option value="all">are made by the new version</option>
            </select>
          </label>
          <button type="submit" name="press" value="keep" className="press" disabled={waiting}>
            {waiting ? "Working" : "Keep"}
          </button>
        </div>
      </div>
    </form>
  );
};
