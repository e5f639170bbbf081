import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { PurchaseLine } from "#lib/purchasing/purchase";
import { figures, Heads } from "../../../_components/Heads";
import { Numbers } from "../../../_components/Numbers";
import { showQuantity } from "../../../_data/quantity";
import { reasonGroups } from "./reasonGroups";

/** Why a line is bought: every garment's part, what the shelf gives, what is spare; they add up to what is bought. */
export const Reasons = ({ line, plan }: { readonly line: PurchaseLine; readonly plan: StagingPlan }) => {
  const { staging } = plan;
  const show = (quantity: number) => showQuantity(quantity, line.measure, staging.production.lengths);
  return (
    <>
      <table>
        <Heads of={["Garment", "For", figures("Needs")]} />
        <tbody>
          {reasonGroups(line.reasons, plan.garments).map((one) => (
            <tr key={`${one.garments[0]} ${one.role}`}>
              <td>
                <Numbers code={staging.production.code} numbers={one.garments} />
              </td>
              <td>
                {one.name || one.role}{" "}
                <span className="units">
                  {one.name && one.role} {one.arithmetic}
                </span>
              </td>
              <td className="num fr">
                {one.garments.length > 1 && one.each !== null && (
                  <span className="units">
                    {one.garments.length} × {show(one.each)}{" "}
                  </span>
                )}
                {show(one.quantity)}
              </td>
            </tr>
          ))}
          <tr className="sum">
            <td />
            <td>Together</td>
            <td className="num fr">{show(line.gross)}</td>
          </tr>
          {line.shrinkage > 0 && (
            <tr>
              <td />
              <td>Lost in washing</td>
              <td className="num fr">+ {show(line.shrinkage)}</td>
            </tr>
          )}
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
