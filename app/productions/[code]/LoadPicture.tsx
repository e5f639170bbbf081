import type { StagingPlan } from "#lib/planning/stagingPlan";
import { HemPicture } from "../../_components/HemPicture";
import { Wide } from "../../_components/Wide";
import { LoadTable } from "./LoadTable";
import { loadRows } from "./loadRows";

/** The hem picture, and the table that proves it. */
export const LoadPicture = ({ plan }: { readonly plan: StagingPlan }) => (
  <section className="part" aria-labelledby="load">
    <header>
      <h2 id="load">Hours needed, hours free</h2>
      <p className="cap">One bar a week, headed by its Monday. Width: hours free. Length: hours needed. Below the chalk line: over.</p>
    </header>
    <Wide label="Hours needed and free, as a picture" fit>
      <HemPicture plan={plan} />
    </Wide>
    <details>
      <summary className="small q">The same in figures</summary>
      <LoadTable table={loadRows(plan.load)} words={plan.staging.production.words} />
    </details>
  </section>
);
