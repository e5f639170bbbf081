"use client";

import { useActionState } from "react";
import { EditAnswer } from "../../../_components/EditAnswer";
import { PutBack } from "../../../_components/PutBack";
import { Said } from "../../../_components/Said";
import { keepCasting, lookAtCasting } from "./actions";
import styles from "./Casting.module.css";
import { EffectPanel } from "./EffectPanel";

/** A form that first says what would follow, and then keeps it: works before scripts load. */
export const LookForm = ({
  production,
  seen,
  children,
}: {
  readonly production: string;
  /** The cells as they were. */
  readonly seen: string;
  readonly children: React.ReactNode;
}) => {
  const [looked, look, looking] = useActionState(lookAtCasting, null);
  const [kept, keep, keeping] = useActionState(keepCasting, null);
  return (
    <div className="cols uneven">
      <form action={look} className="board">
        <input type="hidden" name="production" value={production} />
        {children}
        {!looked?.ok && <Said outcome={looked} />}
        <button type="submit" className={looked?.ok ? "press second" : "press"} disabled={looking}>
          {looking ? "Working it out" : "See what follows"}
        </button>
      </form>
      <section className={styles.panel} aria-labelledby="follows">
        <h2 id="follows">If you keep this</h2>
        {looked?.ok ? <EffectPanel effect={looked.value.effect} /> : <p className="q small">What follows stands here before it is kept.</p>}
        <EditAnswer outcome={kept} />
        {kept?.ok && kept.value.edit && <PutBack production={production} edit={kept.value.edit} press="Take it back" />}
        {looked?.ok && !kept?.ok && (
          <form action={keep} className="acts part">
            <input type="hidden" name="production" value={production} />
            <input type="hidden" name="changes" value={looked.value.changes} />
            <input type="hidden" name="seen" value={seen} />
            <button type="submit" className="press" disabled={keeping}>
              {keeping ? "Keeping" : "Keep"}
            </button>
          </form>
        )}
      </section>
    </div>
  );
};
