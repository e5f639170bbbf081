import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { PurchaseLine } from "#lib/purchasing/purchase";
import { Woven } from "../../../_components/Woven";
import { garmentHref } from "../../../_data/address";
import { showQuantity } from "../../../_data/quantity";

/** Why a line is bought: every garment's part, what the shelf gives, what is spare; they add up to what is bought. */
export const Reasons = ({ line, plan }: { readonly line: PurchaseLine; readonly plan: StagingPlan }) => {
  const { staging } = plan;
  const show = (quantity: number) => showQuantity(quantity, line.measure, staging.production.lengths);
  return (
    <>
      <table>
        <thead>
          <tr>
            <th scope="col">Garment</th>
            <th scope="col">For</th>
            <th scope="col" className="num">
              Needs
            </th>
          </tr>
        </thead>
        <tbody>
          {line.reasons.map((reason) => (
            <tr key={`${reason.garment} ${reason.role}`}>
              <td>
                <Woven number={reason.garment} href={garmentHref(staging.production.code, reason.garment)} />
              </td>
              <td>
                {reason.role} <span className="units">{reason.arithmetic}</span>
              </td>
              <td className="num fr">{show(reason.quantity)}</td>
            </tr>
          ))}
          <tr className="sum">
            <td />
            <td>Together</td>
            <td className="num fr">{show(line.gross)}</td>
          </tr>
          {line.spare > 0 && (
            <tr>
              <td />
              <td>For waste and repair</td>
              <td className="num fr">+ {show(line.spare)}</td>
            </tr>
          )}
          {line.fromShelf.map((lot) => (
            <tr key={lot.lot}>
              <td />
              <td>From the shelf, lot {lot.lot}</td>
              <td className="num fr">− {show(lot.quantity)}</td>
            </tr>
          ))}
          <tr className="sum">
            <td />
            <td>To buy</td>
            <td className="num fr">{show(line.toBuy)}</td>
          </tr>
        </tbody>
      </table>
      <p className="small q">{line.arithmetic}</p>
      {line.warnings.map((warning) => (
        <p key={warning} className="slip wrong">
          {warning}
        </p>
      ))}
    </>
  );
};
