import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { PurchaseList } from "#lib/purchasing/purchase";
import { State } from "../../../_components/State";
import { nameOfMaterial } from "../../../_data/names";
import { plural } from "../../../_data/plural";
import { showQuantity } from "../../../_data/quantity";

/** What is needed and nobody offers. */
export const Unoffered = ({ plan, unoffered }: { readonly plan: StagingPlan; readonly unoffered: PurchaseList["unoffered"] }) =>
  unoffered.length > 0 && (
    <section className="part" aria-labelledby="unoffered">
      <header>
        <h2 id="unoffered">Nobody offers</h2>
      </header>
      <ul className="lines">
        {unoffered.map((need) => {
          const measure = plan.staging.materials.find((material) => material.code === need.material)?.measure ?? "count";
          return (
            <li key={need.material}>
              <State code="late">{nameOfMaterial(plan.staging, need.material)}</State>{" "}
              {showQuantity(need.toBuy, measure, plan.staging.production.lengths)}, for{" "}
              {plural(new Set(need.reasons.map((reason) => reason.garment)).size, "garment")}. It is in no total: add an offer for it.
            </li>
          );
        })}
      </ul>
    </section>
  );
