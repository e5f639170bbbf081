import { showDay } from "#lib/calendar/showDay";
import { freeOf } from "#lib/stock/movement";
import type { LengthSystem } from "#lib/units/showLength";
import type { ShelfEntry } from "#prisma/stock/shelf";
import { figures, Heads } from "../../../../_components/Heads";
import { colourBeside } from "../../../../_data/colourBeside";
import { showQuantity } from "../../../../_data/quantity";
import { LotLabel } from "./LotLabel";
import styles from "./ShelfTable.module.css";
import type { ShelfMaterial } from "./shelfRows";

/** What lies where: each material with its lots and off-cuts, and what is awaited. */
export const ShelfTable = ({
  materials,
  code,
  lengths,
}: {
  readonly materials: readonly ShelfMaterial[];
  readonly code: string;
  readonly lengths: LengthSystem;
}) => (
  <table className="stack">
    <Heads of={["Lot", "Dye lot", "Place", figures("There is"), figures("Kept"), figures("Free"), "For"]} />
    {materials.map((material) => (
      <tbody key={material.material}>
        <tr className={styles.material}>
          <th scope="rowgroup" colSpan={3} className="name">
            {material.name} <span className="units">{colourBeside(material.name, material.colour)}</span>
          </th>
          <td className="num b fr">{showQuantity(material.onHand, material.measure, lengths)}</td>
          <td />
          <td className="num b fr">{showQuantity(material.free, material.measure, lengths)}</td>
          <td />
        </tr>
        {[...material.here, ...material.awaited].map((lot) => (
          <LotRow key={lot.code} lot={lot} code={code} lengths={lengths} />
        ))}
      </tbody>
    ))}
  </table>
);

const LotRow = ({ lot, code, lengths }: { readonly lot: ShelfEntry; readonly code: string; readonly lengths: LengthSystem }) => {
  const show = (quantity: number) => showQuantity(quantity, lot.measure, lengths);
  return (
    <tr>
      <td className="name">
        <LotLabel code={code} lot={lot.code} /> {lot.parent && <span className="units">off-cut of {lot.parent}</span>}
        {lot.breadth !== null && <span className="units"> {showQuantity(lot.breadth, "length", lengths, true)} broad</span>}
      </td>
      <td>{lot.dyeLot}</td>
      <td>{lot.arrives === null ? lot.location : `awaited ${showDay(lot.arrives)}`}</td>
      <td className="num fr">{show(lot.balance.onHand)}</td>
      <td className="num fr" data-label="kept">
        {lot.balance.reserved > 0 && show(lot.balance.reserved)}
      </td>
      <td className="num fr" data-label="free">
        {show(freeOf(lot.balance))}
      </td>
      <td>{[...new Set(lot.reservations.map(({ production, set }) => (set ? `${set} of ${production}` : production)))].join(", ")}</td>
    </tr>
  );
};
