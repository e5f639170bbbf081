import type { LoadCell, StagingPlan } from "#lib/planning/stagingPlan";
import { HemPicture } from "../../_components/HemPicture";
import { Wide } from "../../_components/Wide";
import { LoadTable } from "./LoadTable";

/** The hem picture by skill or by maker, and the table that proves it. */
export const LoadPicture = ({ plan, by = "skill" }: { readonly plan: StagingPlan; readonly by?: LoadCell["by"] }) => (
  <section className="part" aria-labelledby={`load-${by}`}>
    <header>
      <h2 id={`load-${by}`}>Hours needed, hours free{by === "maker" ? ", by maker" : ""}</h2>
      <p className="cap">One bar a week, headed by its Monday. Width: hours free. Length: hours needed. Below the chalk line: over.</p>
    </header>
    <Wide label="Hours needed and free, as a picture" fit>
      <HemPicture plan={plan} by={by} />
    </Wide>
    <details>
      <summary className="small q">The same in figures</summary>
      <LoadTable plan={plan} by={by} />
    </details>
  </section>
);
