import { showDay } from "#lib/calendar/showDay";
import { keptOf, openOf } from "#lib/purchasing/order";
import { showMoney } from "#lib/units/money";
import type { KeptOrder } from "#prisma/orders/orderRow";
import { figures, Heads } from "../../../../../_components/Heads";
import { OpenedLine } from "../../../../../_components/OpenedLine";
import { colourBeside } from "../../../../../_data/colourBeside";
import { showQuantity } from "../../../../../_data/quantity";
import type { ProductionView } from "../../../../../_data/stagingPlan";
import { LineForms } from "./LineForms";
import { LineHistory } from "./LineHistory";

/** The lines of an order, each opened to why it is bought, what came of it, and what can be done. */
export const OrderLines = ({
  order,
  view,
  canAct,
}: {
  readonly order: KeptOrder;
  readonly view: ProductionView;
  readonly canAct: boolean;
}) => {
  const { currency, words, lengths } = view.prepared.staging.production;
  const money = (amount: number) => showMoney(amount, currency, words);
  return (
    <section className="part" aria-label="Lines">
      <table className="stack">
        <Heads
          of={[
            "Material",
            figures("Packs"),
            figures("Each"),
            figures("Together"),
            figures("Came"),
            figures("To come"),
            figures("Promised"),
          ]}
        />
        {order.lines.map((line) => {
          const show = (quantity: number) => showQuantity(quantity, line.measure, lengths);
          const open = order.state === "placed" ? openOf(line) : 0;
          return (
            <OpenedLine
              key={line.line}
              columns={7}
              name={
                <>
                  <b>{line.name}</b> <span className="units">{colourBeside(line.name, line.colour)}</span>
                </>
              }
              cells={
                <>
                  <td className="num fr">
                    {line.packs} × {show(line.pack)}
                  </td>
                  <td className="num">{money(line.pricePerPack)}</td>
                  <td className="num b">{money(line.packs * line.pricePerPack)}</td>
                  <td className="num fr" data-label="came">
                    {line.receipts.length > 0 && show(keptOf(line))}
                  </td>
                  <td className="num fr" data-label="to come">
                    {open > 0 && show(open)}
                  </td>
                  <td className="num" data-label="promised">
                    {line.promised && showDay(line.promised)}
                  </td>
                </>
              }
            >
              <LineHistory line={line} view={view} />
              {canAct && <LineForms order={order} line={line} view={view} />}
            </OpenedLine>
          );
        })}
      </table>
    </section>
  );
};
