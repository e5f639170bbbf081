import type { ShelfEntry, ShelfMovement } from "#prisma/stock/shelf";
import { figures, Heads } from "../../../../../_components/Heads";
import { showQuantity } from "../../../../../_data/quantity";
import { showInstant } from "../../../../../_data/showDates";
import type { ProductionView } from "../../../../../_data/stagingPlan";
import { MOVEMENT_WORDS } from "../movementWords";

/** Everything that ever happened to the lot, the newest first; what is left is their sum. */
export const Movements = ({
  lot,
  movements,
  view,
}: {
  readonly lot: ShelfEntry;
  readonly movements: readonly ShelfMovement[];
  readonly view: ProductionView;
}) => {
  const { lengths, zone } = view.prepared.staging.production;
  const show = (quantity: number) => showQuantity(quantity, lot.measure, lengths);
  return (
    <section className="part" aria-labelledby="movements">
      <header>
        <h2 id="movements">What happened to it</h2>
      </header>
      {movements.length === 0 ? (
        <p>Nothing yet, since it was written into the register.</p>
      ) : (
        <table className="stack">
          <Heads of={["When", "What", figures("By"), figures("Left"), "Who", "Why, for what"]} />
          <tbody>
            {movements.map((movement, at) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: movements are only ever added before these.
              <tr key={movements.length - at}>
                <td className="nb">{showInstant(movement.at, zone)}</td>
                <td>{MOVEMENT_WORDS[movement.kind]}</td>
                <td className="num fr">
                  {movement.quantity === 0 ? "" : `${movement.quantity > 0 ? "+ " : "− "}${show(Math.abs(movement.quantity))}`}
                </td>
                <td className="num b fr" data-label="left">
                  {show(movement.left)}
                </td>
                <td>{movement.who ?? ""}</td>
                <td>{[movement.production, movement.garments.join(", "), movement.reason].filter(Boolean).join("; ")}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
};
