import type { PlanNote, StagingPlan } from "#lib/planning/stagingPlan";
import type { Staging } from "#lib/staging/staging";
import { State, type StateCode } from "../../_components/State";
import { nameOfConstruction, nameOfMaterial } from "../../_data/names";

interface Head {
  readonly kind: PlanNote["kind"];
  readonly head: string;
  readonly state: StateCode;
}

const WAITING: readonly Head[] = [
  { kind: "unplaced", head: "No place in the plan", state: "late" },
  { kind: "approval", head: "Approvals", state: "wait" },
  { kind: "purchase", head: "Orders", state: "wait" },
  { kind: "material", head: "Cloth and notions", state: "wait" },
  { kind: "measurement", head: "Measurements", state: "fit" },
  { kind: "parameter", head: "How it is made", state: "note" },
];

const Notes = ({ notes, staging }: { readonly notes: readonly PlanNote[]; readonly staging: Staging }) => (
  <ul className="lines">
    {notes.map((note) => (
      <li key={`${note.about} ${note.text}`} className="small">
        {/* what an approval is about stands in its own words */}
        {note.kind !== "approval" && <b>{nameOfConstruction(staging, nameOfMaterial(staging, note.about))} </b>}
        {note.text} <span className="q">{note.mend}</span>
      </li>
    ))}
  </ul>
);

/** What waits on somebody: the plan's own notes, by what they wait for. */
export const Waits = ({ plan }: { readonly plan: StagingPlan }) => {
  const { notes, staging } = plan;
  const shown = WAITING.map((head) => ({ ...head, notes: notes.filter((note) => note.kind === head.kind) })).filter(
    (head) => head.notes.length > 0,
  );
  const cautions = notes.filter((note) => note.kind === "caution");
  return (
    <>
      {shown.length === 0 && <p className="q">Nothing waits on anybody.</p>}
      {shown.map(({ kind, head, state, notes: own }) => (
        <div key={kind}>
          <h3>
            <State code={state}>{head}</State>
          </h3>
          <Notes notes={own} staging={staging} />
        </div>
      ))}
      {cautions.length > 0 && (
        <details>
          <summary className="small q">Take care: {cautions.length} cautions of how these things are made</summary>
          <Notes notes={cautions} staging={staging} />
        </details>
      )}
    </>
  );
};
