import type { StagingPlan } from "#lib/planning/stagingPlan";
import { State } from "../../../_components/State";

/** Work that has no place, and why. */
export const Unplaced = ({ plan }: { readonly plan: StagingPlan }) => {
  const notes = plan.notes.filter((note) => note.kind === "unplaced");
  return (
    notes.length > 0 && (
      <section className="part" aria-labelledby="unplaced">
        <header>
          <h2 id="unplaced">No place in the plan</h2>
        </header>
        <ul className="lines">
          {notes.map((note) => (
            <li key={`${note.about} ${note.text}`}>
              <State code="late">{note.about}</State> {note.text} <span className="q">{note.mend}</span>
            </li>
          ))}
        </ul>
      </section>
    )
  );
};
