import { SKILLS } from "#lib/labour/skills";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { words } from "#lib/words/words";
import { Swatch } from "../../../_components/Swatch";
import styles from "./SkillKey.module.css";

/** The weaves of the skills that have work, beside their names. */
export const SkillKey = ({ plan }: { readonly plan: StagingPlan }) => {
  const used = SKILLS.filter((skill) => plan.tasks.some((task) => task.skill === skill));
  return (
    <ul className={styles.key} aria-label="Skills">
      {used.map((skill) => (
        <li key={skill}>
          <Swatch skill={skill} />
          {words(plan.staging.production.words).skills[skill]}
        </li>
      ))}
    </ul>
  );
};
