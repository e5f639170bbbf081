import Link from "next/link";
import { showDay } from "#lib/calendar/showDay";
import type { ClothOnRolls, Roll } from "#lib/purchasing/rolls";
import { figures, Heads } from "../../../../_components/Heads";
import { Numbers } from "../../../../_components/Numbers";
import { Wide } from "../../../../_components/Wide";
import { slug } from "../../../../_data/address";
import { listed, plural } from "../../../../_data/plural";
import { showQuantity } from "../../../../_data/quantity";
import type { ProductionView } from "../../../../_data/stagingPlan";
import { buyingHref } from "../buyingPages";
import { RollsPicture } from "./RollsPicture";

/** One net for everybody who needs it: the sum, the picture of its rolls, and the table behind it. */
export const ClothOfCorps = ({ cloth, view }: { readonly cloth: ClothOnRolls; readonly view: ProductionView }) => {
  const { code, lengths } = view.prepared.staging.production;
  const { material, rolls, garments, sets } = cloth;
  const show = (length: number) => showQuantity(length, "length", lengths);
  return (
    <section className="part" aria-label={material.name}>
      <header>
        <h2>
          <Link href={`${buyingHref(code, "/cutting")}/${slug(material.code)}`} prefetch={false}>
            {material.name}
          </Link>
        </h2>
        <span className="q small">
          {material.colour}; {show(cloth.gross)} needed by {plural(garments.length, "garment")}, {show(cloth.spare)} for washing, waste and
          repair; {show(cloth.fromShelf)} off the shelf, {show(cloth.bought)} bought.
          {sets.length > 0 && ` One dye lot each: ${listed(sets)}.`}
        </span>
      </header>
      <Wide label={`Rolls of ${material.name}`} fit>
        <RollsPicture rolls={rolls} name={material.name} lengths={lengths} />
      </Wide>
      <table className="stack">
        <Heads of={["Roll", "From", figures("Cut off"), figures("Left"), figures("Cut from"), figures("Cut by"), "For"]} />
        <tbody>
          {rolls.map((roll) => (
            <tr key={roll.roll}>
              <th scope="row" className="name">
                Roll {roll.roll}
              </th>
              <td>{fromWords(roll)}</td>
              <td className="num b fr">{show(roll.used)}</td>
              <td className="num fr" data-label="left">
                {roll.length !== null && show(Math.max(0, roll.length - roll.used))}
              </td>
              <td className="num" data-label="cut from">
                {roll.cutFrom && showDay(roll.cutFrom)}
              </td>
              <td className="num" data-label="cut by">
                {roll.cutBy && showDay(roll.cutBy)}
              </td>
              <td>
                <Numbers code={code} numbers={roll.garments} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {cloth.warnings.map((warning) => (
        <p key={warning} className="slip">
          {warning}
        </p>
      ))}
    </section>
  );
};

const fromWords = ({ lot, dyeLot, arrives }: Roll): string => {
  if (lot === null) return "to buy";
  return [`lot ${lot}`, dyeLot && `dye lot ${dyeLot}`, arrives && `awaited ${showDay(arrives)}`].filter(Boolean).join(", ");
};
