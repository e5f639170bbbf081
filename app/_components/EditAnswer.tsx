import type { Edited } from "../_gate/editAction";
import type { Outcome } from "../_gate/outcome";
import { ClashTable } from "./ClashTable";
import { FaultTable } from "./FaultTable";
import { Said } from "./Said";

/** How a form that edits ended: what was said, what would follow, faults that have no field, and a clash of theirs and mine. Inside the form. */
export const EditAnswer = ({ outcome }: { readonly outcome: Outcome<Edited> | null }) => (
  <>
    <Said outcome={outcome} />
    {outcome && !outcome.ok && outcome.faults.length > 0 && <FaultTable faults={outcome.faults} />}
    {outcome && !outcome.ok && outcome.clash && <ClashTable clash={outcome.clash} />}
    {outcome?.ok && outcome.value.effect && (
      <div className="slip part" role="status">
        <h3>What follows if you keep this</h3>
        <ul>
          {outcome.value.effect.says.map((line) => (
            <li key={line}>{line}</li>
          ))}
          {outcome.value.effect.follows.map((line) => (
            <li key={line} className="b">
              {line}
            </li>
          ))}
        </ul>
      </div>
    )}
  </>
);
