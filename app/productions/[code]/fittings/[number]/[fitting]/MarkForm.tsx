"use client";

import { useActionState, useState } from "react";
import { FINDINGS, type FittedAt } from "#lib/fittings/answer";
import { FIGURE_PLACES, nearestPlace, usualAlteration } from "#lib/fittings/places";
import { showHours } from "#lib/units/hours";
import { EditAnswer } from "../../../../../_components/EditAnswer";
import { keepFittingMark } from "./actions";
import styles from "./Fitting.module.css";
import { FittingFigure, type ShownMark } from "./FittingFigure";

/** Another note: touch the figure or choose the place. What is to be altered or remade becomes a task at once. */
export const MarkForm = ({
  at,
  production,
  part,
  marks,
  skills,
}: {
  readonly at: FittedAt;
  readonly production: string;
  readonly part: string;
  readonly marks: readonly ShownMark[];
  readonly skills: readonly (readonly [code: string, name: string])[];
}) => {
  const [outcome, submit, waiting] = useActionState(keepFittingMark, null);
  const [place, setPlace] = useState("front-waist");
  const usual = usualAlteration(place);
  const wrong = outcome && !outcome.ok ? outcome.fields : {};
  const places = (view: "front" | "back") =>
    FIGURE_PLACES.filter((one) => one.view === view).map(({ code, name }) => (
      <option key={code} value={code}>
        {name}
      </option>
    ));
  return (
    <>
      <FittingFigure
        marks={marks}
        here={FIGURE_PLACES.find(({ code }) => code === place)}
        onPoint={(view, x, y) => setPlace(nearestPlace(view, x, y).code)}
      />
      <form action={submit} className={styles.form}>
        <input type="hidden" name="production" value={production} />
        <input type="hidden" name="garment" value={at.garment} />
        <input type="hidden" name="fitting" value={at.fitting} />
        <input type="hidden" name="performer" value={at.performer} />
        <input type="hidden" name="part" value={part} />
        <label className="field">
          Where
          <select name="place" value={place} onChange={(event) => setPlace(event.target.value)}>
            <optgroup label="Front">{places("front")}</optgroup>
            <optgroup label="Back">{places("back")}</optgroup>
          </select>
        </label>
        <fieldset className={styles.choice}>
          <legend>What it needs</legend>
          {FINDINGS.map((finding) => (
            <label key={finding}>
              <input type="radio" name="finding" value={finding} defaultChecked={finding === "alter"} /> {finding}
            </label>
          ))}
        </fieldset>
        <label className="field">
          In words
          <input type="text" name="text" maxLength={200} placeholder="take in 3/8 in each side" autoComplete="off" />
        </label>
        <div className={styles.two}>
          <label className="field">
            Skill
            <select name="skill" defaultValue="">
              <option value="">as is usual there</option>
              {skills.map(([code, name]) => (
                <option key={code} value={code}>
                  {name}
                </option>
              ))}
            </select>
          </label>
          <label className="field">
            Time it takes
            <input
              type="text"
              name="minutes"
              placeholder={`${showHours(usual.minutes)}, as is usual`}
              autoComplete="off"
              aria-invalid={wrong.minutes !== undefined}
            />
            {wrong.minutes && <span className="bad">{wrong.minutes}</span>}
          </label>
        </div>
        <EditAnswer outcome={outcome} />
        <button type="submit" className="press second tall" style={{ width: "100%" }} disabled={waiting}>
          {waiting ? "Noting" : "Note it"}
        </button>
      </form>
    </>
  );
};
