"use client";

import { useActionState, useEffect, useRef, useState } from "react";
import type { Recast } from "#lib/casting/castCell";
import { EditAnswer } from "../../../_components/EditAnswer";
import { PutBack } from "../../../_components/PutBack";
import { plural } from "../../../_data/plural";
import { keepCasting, lookAtCasting } from "./actions";
import styles from "./Casting.module.css";
import { EffectPanel } from "./EffectPanel";
import type { EffectView } from "./effectView";

const PAUSE = 150;

/** Beside the grid: what follows from what is typed so far, and the presses that keep it or put it back. */
export const KeepPanel = ({
  production,
  changes,
  seen,
  onPutBack,
  onKept,
}: {
  readonly production: string;
  readonly changes: readonly Recast[];
  /** The changed cells as they were. */
  readonly seen: readonly Recast[];
  readonly onPutBack: () => void;
  readonly onKept: () => void;
}) => {
  const [outcome, submit, waiting] = useActionState(keepCasting, null);
  const [effect, setEffect] = useState<EffectView | null>(null);
  const [trouble, setTrouble] = useState("");
  const asked = useRef(0);
  const done = useRef<unknown>(null);
  const text = JSON.stringify(changes);
  useEffect(() => {
    const turn = ++asked.current;
    setTrouble("");
    if (text === "[]") return setEffect(null);
    const timer = setTimeout(async () => {
      const form = new FormData();
      form.set("production", production);
      form.set("changes", text);
      const answer = await lookAtCasting(null, form).catch(() => null);
      if (turn !== asked.current) return;
      if (answer?.ok) setEffect(answer.value.effect);
      else setTrouble(answer?.message ?? "What follows could not be worked out: the connection was lost. What was typed is still here.");
    }, PAUSE);
    return () => clearTimeout(timer);
  }, [text, production]);
  useEffect(() => {
    if (outcome?.ok && done.current !== outcome) onKept();
    done.current = outcome;
  }, [outcome, onKept]);
  return (
    <aside className={`${styles.panel} no-print`} aria-label="If you keep this">
      <h2>If you keep this</h2>
      {changes.length === 0 ? (
        <p className="q small">
          Change a cell, and what follows for garments, hours, net and fittings stands here before anything is kept.
        </p>
      ) : (
        <>
          <div aria-live="polite" aria-busy={effect === null}>
            {effect ? <EffectPanel effect={effect} /> : <p className="q small">Working it out: {plural(changes.length, "cell")}.</p>}
          </div>
          {trouble && (
            <p role="alert" className="slip wrong">
              {trouble}
            </p>
          )}
        </>
      )}
      {(changes.length === 0 || !outcome?.ok) && <EditAnswer outcome={outcome} />}
      {outcome?.ok && outcome.value.edit && changes.length === 0 && (
        <PutBack key={outcome.value.edit} production={production} edit={outcome.value.edit} press="Take it back" />
      )}
      {changes.length > 0 && (
        <form action={submit} className={`acts ${styles.keep}`}>
          <input type="hidden" name="production" value={production} />
          <input type="hidden" name="changes" value={text} />
          <input type="hidden" name="seen" value={JSON.stringify(seen)} />
          <button type="submit" className="press" disabled={waiting}>
            {waiting ? "Keeping" : "Keep"}
          </button>
          <button type="button" className="press second" onClick={onPutBack}>
            Put back
          </button>
        </form>
      )}
    </aside>
  );
};
