import { dayNumber } from "#lib/calendar/days";
import { MINUTES_PER_DAY, type PlainDate } from "#lib/calendar/plainDate";
import { howFar, STAGES, type Stage } from "#lib/planning/howFar";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { Woven } from "../../_components/Woven";
import { garmentHref } from "../../_data/address";
import { plural } from "../../_data/plural";
import styles from "./HowFar.module.css";

const WORDS: Readonly<Record<Stage, string>> = {
  "not begun": "Not begun",
  "being made": "Being made",
  fitted: "Fitted, to be finished",
  done: "Done",
  "no place": "With work that has no place",
};

/** Garments by how far the plan has them this morning: a length of cloth for each stage, which opens to their numbers. */
export const HowFar = ({ plan, today }: { readonly plan: StagingPlan; readonly today: PlainDate }) => {
  const stages = howFar(plan, dayNumber(today) * MINUTES_PER_DAY);
  const inStage = (stage: Stage) => plan.garments.filter(({ number }) => stages.get(number) === stage);
  return (
    <section className="part" aria-labelledby="how-far">
      <header>
        <h2 id="how-far">How far they are</h2>
        <p className="cap">By the plan, this morning. Each opens to the numbers it is made of.</p>
      </header>
      {STAGES.map((stage) => {
        const garments = inStage(stage);
        if (garments.length === 0) return null;
        const part = (100 * garments.length) / plan.garments.length;
        return (
          <details key={stage} className={styles.stage}>
            <summary>
              <span className={styles.name}>{WORDS[stage]}</span>
              <span
                className={`${styles.cloth} ${stage === "no place" ? styles.wrong : ""}`}
                style={{ inlineSize: `${part / 2}%` }}
                aria-hidden="true"
              />
              <b>{plural(garments.length, "garment")}</b>
            </summary>
            <p>
              {garments.map(({ number }) => (
                <Woven key={number} number={number} href={garmentHref(plan.staging.production.code, number)} />
              ))}
            </p>
          </details>
        );
      })}
    </section>
  );
};
