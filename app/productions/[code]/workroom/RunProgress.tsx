"use client";

import { useRouter } from "next/navigation";
import { useEffect, useState } from "react";
import { ActionForm } from "../../../_components/ActionForm";
import { productionHref } from "../../../_data/address";
import { stopLevelling } from "./actions";
import styles from "./RunProgress.module.css";
import type { RunWords } from "./runWords";

const EVERY = 1000;

/** How far a levelling is. It asks again each second until it has ended, then shows the new plan; without scripts one looks again by hand. */
export const RunProgress = ({
  code,
  run,
  first,
  canStop,
}: {
  readonly code: string;
  readonly run: string;
  readonly first: RunWords;
  readonly canStop: boolean;
}) => {
  const router = useRouter();
  const [words, setWords] = useState(first);
  useEffect(() => {
    if (!words.active) return;
    const ask = async () => {
      const answer = await fetch(`${productionHref(code)}/workroom/run`).catch(() => null);
      if (!answer?.ok) return;
      const next = (await answer.json()) as RunWords;
      setWords(next);
      if (!next.active) router.refresh();
    };
    const timer = setInterval(() => void ask(), EVERY);
    return () => clearInterval(timer);
  }, [words.active, code, router]);
  return (
    <section className={`${styles.run} no-print`} aria-label="Levelling">
      <p role="status" className={words.bad ? "bad" : undefined}>
        {words.text}
      </p>
      {words.active && (
        <>
          <progress max={words.rounds} value={words.round} aria-label="Rounds done" />
          <noscript>
            <a href={`${productionHref(code)}/workroom`}>Look again</a>
          </noscript>
          {canStop && (
            <ActionForm action={stopLevelling} press="Stop, keep the best" busy="Stopping">
              <input type="hidden" name="production" value={code} />
              <input type="hidden" name="run" value={run} />
            </ActionForm>
          )}
        </>
      )}
    </section>
  );
};
