import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { PurchaseList } from "#lib/purchasing/purchase";
import { figures, Heads } from "../../../_components/Heads";
import { Numbers } from "../../../_components/Numbers";
import { showQuantity } from "../../../_data/quantity";

/** What the shelf meets whole: nothing is bought for it, and the lots are spoken for. */
export const Covered = ({ plan, covered }: { readonly plan: StagingPlan; readonly covered: PurchaseList["covered"] }) => {
  const { code, lengths } = plan.staging.production;
  return (
    covered.length > 0 && (
      <section className="part" aria-labelledby="covered">
        <header>
          <h2 id="covered">From the shelf</h2>
        </header>
        <table className="stack">
          <Heads of={["Material", figures("Needed"), "From", "For"]} />
          <tbody>
            {covered.map((need) => (
              <tr key={`${need.material} ${need.oneLotSet}`}>
                <th scope="row">{need.name}</th>
                <td className="num fr">{showQuantity(need.gross, need.measure, lengths)}</td>
                <td data-label="from">
                  {need.fromShelf.map(({ lot, quantity }) => `lot ${lot}, ${showQuantity(quantity, need.measure, lengths)}`).join("; ")}
                </td>
                <td data-label="for">
                  <Numbers code={code} numbers={need.reasons.map(({ garment }) => garment)} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    )
  );
};
