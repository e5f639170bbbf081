"use client";

import { usePolled } from "../../../../_components/usePolled";
import styles from "../RunProgress.module.css";
import type { RemedyWords } from "./remedyWords";

/** How far a search for remedies is; without scripts one looks again by hand. */
export const RemedyProgress = ({ href, first }: { readonly href: string; readonly first: RemedyWords }) => {
  const words = usePolled(`${href}/run`, first);
  return (
    <section className={`${styles.run} no-print`} aria-label="Trying remedies">
      <p role="status" className={words.bad ? "bad" : undefined}>
        {words.text}
      </p>
      {words.active && (
        <>
          <progress max={words.plans} value={words.made} aria-label="Plans made" />
          <noscript>
            <a href={href}>Look again</a>
          </noscript>
        </>
      )}
    </section>
  );
};
