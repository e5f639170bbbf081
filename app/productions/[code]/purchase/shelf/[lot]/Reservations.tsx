import type { ShelfEntry } from "#prisma/stock/shelf";
import { ActionForm } from "../../../../../_components/ActionForm";
import { listed } from "../../../../../_data/plural";
import { showQuantity } from "../../../../../_data/quantity";
import type { ProductionView } from "../../../../../_data/stagingPlan";
import { release } from "../actions";

/** What the lot is kept for. */
export const Reservations = ({
  lot,
  view,
  canRelease,
}: {
  readonly lot: ShelfEntry;
  readonly view: ProductionView;
  readonly canRelease: boolean;
}) => {
  const { code, lengths } = view.prepared.staging.production;
  return (
    lot.reservations.length > 0 && (
      <section className="part" aria-labelledby="kept">
        <header>
          <h2 id="kept">Kept for</h2>
        </header>
        <table className="stack">
          <thead>
            <tr>
              <th scope="col">Production</th>
              <th scope="col">For</th>
              <th scope="col" className="num">
                How much
              </th>
              <th scope="col">
                <span className="unseen">Release</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {lot.reservations.map((kept) => (
              <tr key={kept.code}>
                <th scope="row" className="name">
                  {kept.production}
                </th>
                <td>{[kept.set, listed(kept.garments)].filter(Boolean).join(": ") || "the whole production"}</td>
                <td className="num fr">{showQuantity(kept.quantity, lot.measure, lengths)}</td>
                <td className="no-print">
                  {canRelease && (
                    <ActionForm action={release} press="Release" busy="Releasing" look="plain">
                      <input type="hidden" name="production" value={code} />
                      <input type="hidden" name="lot" value={lot.code} />
                      <input type="hidden" name="reservation" value={kept.code} />
                    </ActionForm>
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    )
  );
};
