"use client";

import { useActionState } from "react";
import type { TaskState } from "#prisma/work/marks";
import { Said } from "../../../../../_components/Said";
import { markMyTask } from "./actions";
import styles from "./MakerDay.module.css";

/**
 * The presses under a task: begin it, say that it is done, that it is stuck and why, or put it down; each with the minutes worked, where
 * somebody writes them. The plan's own minutes are not filled in: what nobody counted would pass for counted.
 */
export const MarkForm = ({
  production,
  maker,
  task,
  name,
  state,
  likely,
}: {
  readonly production: string;
  readonly maker: string;
  readonly task: string;
  /** Of the task, for who hears the presses. */
  readonly name: string;
  readonly state: TaskState;
  /** Minutes that are still to be expected. */
  readonly likely: number;
}) => {
  const [outcome, submit, waiting] = useActionState(markMyTask, null);
  const wrong = outcome && !outcome.ok ? outcome.fields : {};
  return (
    <form action={submit} className={`${styles.marks} no-print`}>
      <input type="hidden" name="production" value={production} />
      <input type="hidden" name="maker" value={maker} />
      <input type="hidden" name="task" value={task} />
      {state === "begun" ? (
        <>
          <label className={styles.minutes}>
            Minutes worked today
            <input type="number" name="minutes" min={0} max={1440} inputMode="numeric" placeholder={`of about ${likely}`} />
            {wrong.minutes && <span className="bad">{wrong.minutes}</span>}
          </label>
          <button type="submit" name="did" value="done" className="press tall" disabled={waiting}>
            Done
          </button>
          <details>
            <summary className="press second">Stuck</summary>
            <label className="field">
              What is in the way of {name}
              <input name="said" maxLength={500} autoComplete="off" />
              {wrong.said && <span className="bad">{wrong.said}</span>}
            </label>
            <button type="submit" name="did" value="stuck" className="press second" disabled={waiting}>
              Say so
            </button>
          </details>
          <button type="submit" name="did" value="open" className="press second" disabled={waiting}>
            Put down
          </button>
        </>
      ) : (
        <button
          type="submit"
          name="did"
          value={state === "done" ? "open" : "begun"}
          className={state === "open" ? "press tall" : "press second"}
          disabled={waiting}
        >
          {state === "done" ? "Not done after all" : state === "stuck" ? "Go on" : "Begin"}
          <span className="unseen"> {name}</span>
        </button>
      )}
      <Said outcome={outcome} />
    </form>
  );
};
