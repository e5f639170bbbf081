import type { PlanNote, StagingPlan } from "#lib/planning/stagingPlan";
import { State, type StateCode } from "../../_components/State";

const HEADS: readonly { readonly kind: PlanNote["kind"]; readonly head: string; readonly state: StateCode }[] = [
  { kind: "unplaced", head: "No place in the plan", state: "late" },
  { kind: "purchase", head: "Orders", state: "wait" },
  { kind: "material", head: "Cloth and notions", state: "wait" },
  { kind: "measurement", head: "Measurements", state: "fit" },
  { kind: "parameter", head: "How it is made", state: "note" },
  { kind: "caution", head: "Take care", state: "note" },
];

/** What waits on somebody: the plan's own notes, by what they wait for. Measurements only for those who may see them. */
export const Waits = ({ plan, measurements }: { readonly plan: StagingPlan; readonly measurements: boolean }) => {
  const shown = HEADS.filter(({ kind }) => kind !== "measurement" || measurements)
    .map((head) => ({ ...head, notes: plan.notes.filter((note) => note.kind === head.kind) }))
    .filter(({ notes }) => notes.length > 0);
  if (shown.length === 0) return <p className="q">Nothing waits on anybody.</p>;
  return shown.map(({ kind, head, state, notes }) => (
    <div key={kind}>
      <h3>
        <State code={state}>{head}</State>
      </h3>
      <ul className="lines">
        {notes.map((note) => (
          <li key={`${note.about} ${note.text}`} className="small">
            <b>{note.about}</b> {note.text} <span className="q">{note.mend}</span>
          </li>
        ))}
      </ul>
    </div>
  ));
};
