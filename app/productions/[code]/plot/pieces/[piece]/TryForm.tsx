"use client";

import { useActionState, useEffect, useRef, useState } from "react";
import { EditAnswer } from "../../../../../_components/EditAnswer";
import { keepTried } from "./actions";
import { Figures } from "./Figures";
import type { FiguresView } from "./figuresView";
import { type ParameterField, ParameterInput } from "./ParameterInput";
import styles from "./Piece.module.css";

const PAUSE = 120;

/**
 * A construction and its parameters, tried: while they are typed the server works out hours, net and cost of one garment; a press works it out
 * without scripts. Nothing is kept before it is said so.
 */
export const TryForm = ({
  production,
  piece,
  costume,
  construction,
  constructions,
  parameters,
  first,
  address,
}: {
  readonly production: string;
  readonly piece: string;
  readonly costume: string;
  readonly construction: string;
  readonly constructions: readonly { readonly code: string; readonly name: string }[];
  readonly parameters: readonly ParameterField[];
  readonly first: FiguresView | null;
  /** Of the page; its figures stand under it. */
  readonly address: string;
}) => {
  const [outcome, keep, waiting] = useActionState(keepTried, null);
  const [figures, setFigures] = useState(first);
  const [stale, setStale] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const asking = useRef<AbortController | null>(null);
  useEffect(() => setFigures(first), [first]);

  const query = () => {
    const fields = [...new FormData(form.current!)].filter(
      (field): field is [string, string] => typeof field[1] === "string" && /^(construction|p\.)/.test(field[0]),
    );
    return new URLSearchParams(fields).toString();
  };
  const ask = async () => {
    asking.current?.abort();
    const controller = new AbortController();
    asking.current = controller;
    const answer = await fetch(`${address}/figures?${query()}`, { signal: controller.signal })
      .then((got) => (got.ok ? (got.json() as Promise<FiguresView | null>) : undefined))
      .catch(() => undefined);
    if (controller.signal.aborted) return;
    if (answer !== undefined) setFigures(answer);
    setStale(answer === undefined);
  };
  const onChange = (event: React.FormEvent) => {
    // Another construction has other parameters: the page is asked for again, as without scripts.
    if ((event.target as HTMLElement).getAttribute("name") === "construction") return window.location.assign(`${address}?${query()}`);
    clearTimeout(timer.current);
    timer.current = setTimeout(() => void ask(), PAUSE);
  };
  const refusal = outcome && !outcome.ok ? outcome : null;
  return (
    <form ref={form} method="get" action={address} onInput={onChange} className={styles.try}>
      <input type="hidden" name="production" value={production} />
      <input type="hidden" name="piece" value={piece} />
      <input type="hidden" name="costume" value={costume} />
      <div>
        <label className="field">
          Construction
          <select name="construction" defaultValue={construction}>
            <option value="">no work to be done on it</option>
            {constructions.map(({ code, name }) => (
              <option key={code} value={code}>
                {name}
              </option>
            ))}
          </select>
        </label>
        <div className={styles.parameters}>
          {parameters.map((parameter) => (
            <ParameterInput
              key={parameter.code}
              parameter={parameter}
              kept={refusal?.kept[parameter.field]}
              wrong={refusal?.fields[parameter.field]}
            />
          ))}
        </div>
      </div>
      <section className={styles.figures} aria-label="What one of it takes" aria-live="polite">
        <Figures figures={figures} />
        {stale && (
          <p role="alert" className="bad small">
            The figures could not be worked out: the connection was lost. Press to try again.
          </p>
        )}
        <EditAnswer outcome={outcome} />
        <div className={`acts ${styles.acts}`}>
          <noscript>
            <button type="submit" className="press second">
              Work it out
            </button>
          </noscript>
          <button type="submit" className="press" formAction={keep} disabled={waiting}>
            {waiting ? "Keeping" : "Keep"}
          </button>
        </div>
      </section>
    </form>
  );
};
