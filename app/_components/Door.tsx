import styles from "./Door.module.css";
import { Mark } from "./Mark";
import { SkirtFromAbove } from "./SkirtFromAbove";

/** The page one meets outside: what this is and a form, beside a skirt seen from above. */
export const Door = ({ head, say, children }: { readonly head: string; readonly say: string; readonly children: React.ReactNode }) => (
  <main className={styles.door}>
    <section className={styles.in}>
      <Mark />
      <h1>{head}</h1>
      <p className={styles.say}>{say}</p>
      {children}
    </section>
    <div className={styles.picture}>
      <SkirtFromAbove />
    </div>
  </main>
);
