"use client";

import { useActionState, useEffect, useRef, useState } from "react";
import { redoLast, undoLast } from "../_gate/takeBackActions";
import { EditAnswer } from "./EditAnswer";
import styles from "./UndoBar.module.css";

const SHOWN_SECONDS = 12;

/** Puts back what the person did last, and does it again: by presses, and by Ctrl+Z and Ctrl+Shift+Z (or Ctrl+Y) outside fields. */
export const UndoBar = ({ production }: { readonly production: string }) => {
  const [undone, undo, undoing] = useActionState(undoLast, null);
  const [redone, redo, redoing] = useActionState(redoLast, null);
  const [outcome, setOutcome] = useState<typeof undone>(null);
  const undoForm = useRef<HTMLFormElement>(null);
  const redoForm = useRef<HTMLFormElement>(null);
  useEffect(() => setOutcome(undone), [undone]);
  useEffect(() => setOutcome(redone), [redone]);
  useEffect(() => {
    if (!outcome || (!outcome.ok && outcome.clash)) return;
    const timer = setTimeout(() => setOutcome(null), SHOWN_SECONDS * 1000);
    return () => clearTimeout(timer);
  }, [outcome]);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const inField =
        event.target instanceof Element && event.target.closest("input, textarea, select, [contenteditable], [role=grid]") !== null;
      if (inField || event.altKey || !(event.ctrlKey || event.metaKey)) return;
      const key = event.key.toLowerCase();
      if (key !== "z" && key !== "y") return;
      event.preventDefault();
      (key === "y" || event.shiftKey ? redoForm : undoForm).current?.requestSubmit();
    };
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  }, []);
  return (
    <div className={styles.bar}>
      <form action={undo} ref={undoForm}>
        <input type="hidden" name="production" value={production} />
        <button type="submit" className="plain" disabled={undoing} aria-keyshortcuts="Control+Z">
          Put back
        </button>
      </form>
      <form action={redo} ref={redoForm}>
        <input type="hidden" name="production" value={production} />
        <button type="submit" className="plain" disabled={redoing} aria-keyshortcuts="Control+Shift+Z">
          Do again
        </button>
      </form>
      <div className={styles.said} aria-live="polite">
        {outcome && (
          <form action={outcome === redone ? redo : undo}>
            <input type="hidden" name="production" value={production} />
            <EditAnswer outcome={outcome} />
            <button type="button" className="plain" onClick={() => setOutcome(null)}>
              Close
            </button>
          </form>
        )}
      </div>
    </div>
  );
};
