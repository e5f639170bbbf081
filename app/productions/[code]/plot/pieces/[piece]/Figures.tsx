import { figures as figuresHead, Heads } from "../../../../../_components/Heads";
import type { FiguresView } from "./figuresView";

/** Hours, net and cost of one garment of a piece. */
export const Figures = ({ figures }: { readonly figures: FiguresView | null }) => {
  if (!figures) return <p className="q">Nobody wears it yet, so that there is no garment to reckon: cast its role first.</p>;
  const net = figures.needs.filter(({ isNet }) => isNet);
  return (
    <>
      <dl className="figures">
        <div>
          <dt>Hours</dt>
          <dd className="b">{figures.likely}</dd>
          <dd className="units">
            {figures.low} to {figures.high}, fittings {figures.fittings}
          </dd>
        </div>
        {net.length > 0 && (
          <div>
            <dt>Net</dt>
            <dd className="b fr">{net.map(({ quantity }) => quantity).join(" + ")}</dd>
            <dd className="units">off the roll, before waste and spare</dd>
          </div>
        )}
        {figures.cost && (
          <div>
            <dt>Cost</dt>
            <dd className="b">{figures.cost.sum}</dd>
            <dd className="units">
              work {figures.cost.labour}, cloth {figures.cost.materials} as a share of packs
            </dd>
          </div>
        )}
      </dl>
      {figures.problems.map((problem) => (
        <p key={problem} className="bad small">
          {problem}
        </p>
      ))}
      {figures.cost && figures.cost.leftOut.length > 0 && <p className="cap">Left out of the cost: {figures.cost.leftOut.join("; ")}.</p>}
      <table>
        <Heads of={["Needs of one", figuresHead("Quantity")]} />
        <tbody>
          {figures.needs.map(({ name, quantity }) => (
            <tr key={name}>
              <td>{name}</td>
              <td className="num fr">{quantity}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="cap">
        Of one, for the first who wears it; {figures.garments === 1 ? "one garment is" : `${figures.garments} garments are`} made so.
        Standard work, before batches.
      </p>
    </>
  );
};
